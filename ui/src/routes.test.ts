// Addresses are read and written, and what is not known is Today.

import { expect, it } from 'vitest';
import { ASIDE, parseRoute, PLACES, routeTo } from './routes';

it('reads back every address that it writes', () => {
  for (const stand of [...PLACES, ...ASIDE]) {
    expect(parseRoute(routeTo(stand))).toEqual({ stand, open: '' });
    expect(parseRoute(routeTo(stand, 'a/b ü'))).toEqual({ stand, open: 'a/b ü' });
  }
});

it('takes what it does not know for Today', () => {
  for (const hash of ['', '#', '#/', '#/elsewhere/x', '#today-is-fine']) {
    expect(parseRoute(hash)).toEqual({ stand: 'today', open: '' });
  }
});

it('survives an address that was cut short', () => {
  expect(parseRoute('#/book/%E0%A4%A')).toEqual({ stand: 'book', open: '' });
});
