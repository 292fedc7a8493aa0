// A purchase, by hand and from its receipt.

import { expect, it } from 'vitest';
import type { BookLine, TieLine } from '../../../door/types';
import { nothingRead } from '../../../parts/from-paper';
import { emptyPart } from '../../../parts/visit/lib';
import { amendAddress, amendedAt, boughtFrom, boughtOf, boughtToWrite, emptyBought, shopsOf } from './bought';

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

it('takes a purchase back into the form, price, kind and papers with it, and no other line', () => {
  const price = { number: '17.80', currency: 'SEK' };
  const served = { of: 'catalogue' as const, number: 1, key: 'oil' };
  const part = { name: 'Filter', maker: 'Quarrel', number: 'Q5', quantity: '2', measure: 'piece', price, served, kind: 'filter' };
  const paper = { subject: 'p', hash: 'h', width: 1, height: 1, filed: '2026-03-04', whole: null, page: null };
  const says: BookLine['says'] = { kind: 'bought', shop: 'Parts Heron', parts: [part], cost: null, note: 'n', papers: [paper] };
  const bought: BookLine = { subject: 's', day: '2026-03-04', reading: null, says, written: '2026-03-05', amended: 0, struck: null };
  const { served: _, ...written } = part;
  expect(boughtOf(bought)).toEqual({
    day: '2026-03-04',
    shop: 'Parts Heron',
    parts: [{ ...written, price: '17.80', item: { catalogue: 1 } }],
    cost: '',
    currency: 'SEK',
    note: 'n',
    papers: ['p'],
  });
  expect(boughtOf({ ...bought, says: { kind: 'newer' } })).toBeUndefined();
});

it('has an address at which a purchase is put right', () => {
  expect(amendedAt(amendAddress('0198'))).toBe('0198');
  expect(amendedAt('bought')).toBeUndefined();
});
