// A purchase, by hand and from its receipt.

import { expect, it } from 'vitest';
import type { TieLine } from '../../../door/types';
import { nothingRead } from '../../../parts/from-paper';
import { emptyPart } from '../../../parts/visit/lib';
import { boughtFrom, boughtToWrite, emptyBought, shopsOf } from './bought';

const line = (place: string, currency: string | null): TieLine => ({
  subject: place,
  kind: 'bought',
  day: '2026-03-04',
  items: [],
  place,
  cost: currency === null ? null : { number: '1.00', currency },
});
const view = { lines: [line('Parts Heron', null), line('', 'CHF'), line('Parts Heron', 'EUR')], stock: [] };

it('starts today, in the currency used last', () => {
  expect(emptyBought(view, '2026-06-01')).toMatchObject({ day: '2026-06-01', currency: 'CHF', papers: [] });
});

it('starts with what the receipt says, whose paper belongs to it', () => {
  const from = { ...nothingRead('p'), shop: 'Parts Egret', cost: '9.50', parts: [{ ...emptyPart(), number: 'Q5' }] };
  expect(boughtFrom(from, view)).toMatchObject({ day: '', shop: 'Parts Egret', cost: '9.50', currency: 'CHF', papers: ['p'] });
  expect(boughtFrom({ ...from, currency: 'GBP' }, view).currency).toBe('GBP');
});

it('leaves out rows in which nothing was written', () => {
  const bought = { ...emptyBought(view, ''), parts: [emptyPart(), { ...emptyPart(), name: 'Oil' }] };
  expect(boughtToWrite(bought).parts.map(({ name }) => name)).toEqual(['Oil']);
});

it('offers each shop once', () => {
  expect(shopsOf(view)).toEqual(['Parts Heron']);
});
