// Stretches of a long list.

import { expect, it } from 'vitest';
import { columnsIn, stretches } from './windowed';

it('hold every row once, in its order', () => {
  const rows = Array.from({ length: 7 }, (_, index) => index);
  expect(stretches(rows, 3)).toEqual([[0, 1, 2], [3, 4, 5], [6]]);
  expect(stretches(rows, 7)).toEqual([rows]);
  expect(stretches([], 3)).toEqual([]);
});

it('are as wide as columns fit, with the gaps between them', () => {
  expect([columnsIn(328, 102, 13), columnsIn(332, 102, 13), columnsIn(40, 102, 13)]).toEqual([2, 3, 1]);
});
