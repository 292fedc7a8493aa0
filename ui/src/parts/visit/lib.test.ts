// The visit form: items, parts, and the way back from a line of the book.

import { describe, expect, it } from 'vitest';
import type { BookLine } from '../../door/types';
import { cleaned, emptyPart, emptyVisit, sameItem, toggled, visitOf } from './lib';

const line: BookLine = {
  subject: 's',
  day: '2025-11-03',
  reading: { count: 91_200, unit: 'km' },
  says: {
    kind: 'visit',
    workshop: 'Garage Plover',
    items: [{ of: 'catalogue', number: 1, key: 'engine-oil' }, { of: 'own', name: 'Roof rail' }],
    parts: [
      { name: 'oil', maker: 'Quarrel', number: 'Q5', quantity: '4.3', measure: 'litre', price: { number: '41.00', currency: 'CHF' }, served: null },
    ],
    cost: null,
    note: '',
    papers: [{ subject: 'p', hash: 'h', width: 1, height: 1, filed: '2025-11-03' }],
  },
  written: '2025-11-03',
  amended: 0,
  struck: null,
};

describe('items', () => {
  it('are the same by number or by words', () => {
    expect(sameItem({ catalogue: 1 }, { catalogue: 1 })).toBe(true);
    expect(sameItem({ catalogue: 1 }, { own: '1' })).toBe(false);
    expect(sameItem({ own: 'Roof rail' }, { own: 'Roof rail' })).toBe(true);
  });

  it('go in and out', () => {
    const one = toggled([], { catalogue: 1 });
    expect(toggled(one, { own: 'a' })).toEqual([{ catalogue: 1 }, { own: 'a' }]);
    expect(toggled(one, { catalogue: 1 })).toEqual([]);
  });
});

describe('a line of the book', () => {
  it('comes back into a form whole, with the currency of a price where no cost was written', () => {
    const visit = visitOf(line);
    expect(visit).toMatchObject({ reading: '91200', workshop: 'Garage Plover', currency: 'CHF', papers: ['p'] });
    expect(visit?.items).toEqual([{ catalogue: 1 }, { own: 'Roof rail' }]);
    expect(visit?.parts[0]).toMatchObject({ quantity: '4.3', price: '41.00' });
  });

  it('that is no visit gives no form', () => {
    expect(visitOf({ ...line, says: { kind: 'newer' } })).toBeUndefined();
  });
});

it('leaves out part rows in which nothing was written', () => {
  const visit = { ...emptyVisit('EUR'), parts: [emptyPart(), { ...emptyPart(), number: 'Q5' }] };
  expect(cleaned(visit).parts).toHaveLength(1);
});
