// What was read becomes rows, and rows become the start of a line of the book.

import { describe, expect, it } from 'vitest';
import type { ReceiptView } from '../../../door/types';
import { asksDay, disagreements, draftOf, takenOver, warningOf, windowOn } from './receipt';

const area: [number, number, number, number] = [0.1, 0.2, 0.5, 0.02];
const line = { text: 'Oil filter', quantity: '', measure: '', price: '9.50', number: { value: 'QF 20-118', sure: 'likely', area }, sure: 'likely', area };
const read: ReceiptView = {
  rows: [],
  fields: {
    shop: { value: 'Parts Heron', sure: 'likely', area },
    day: { value: '2026-04-03', or: null, sure: 'sure', area },
    currency: { value: 'EUR', sure: 'sure', area },
    total: { value: '19.00', currency: 'EUR', sure: 'sure', area },
    tax: [{ value: '3.03', currency: 'EUR', sure: 'likely', area }],
    lines: [line, { ...line, text: 'Coffee', number: null, sure: 'doubtful' }],
    numbers: [{ value: 'qf20118', sure: 'likely', area }, { value: 'Z 1', sure: 'likely', area }],
    fuel: null,
    odometer: { value: 98_420, unit: 'km', sure: 'likely', area },
  },
  checks: [],
  warned: [],
};

const nothing: ReceiptView = {
  rows: [],
  fields: { shop: null, day: null, currency: null, total: null, tax: [], lines: [], numbers: [], fuel: null, odometer: null },
  checks: [],
  warned: [],
};

describe('a receipt', () => {
  it('offers each number once, and ticks no guess', () => {
    const { parts } = draftOf(read);
    expect(parts.map(({ part, taken }) => [part.name, part.number, taken])).toEqual([
      ['Oil filter', 'QF 20-118', true],
      ['Coffee', '', false],
      ['', 'Z 1', true],
    ]);
  });

  it('calls a line no surer than its number', () => {
    const lines = [{ ...line, sure: 'sure' }, { ...line, sure: 'sure', number: null }];
    const { parts } = draftOf({ ...read, fields: { ...read.fields, lines, numbers: [] } });
    expect(parts.map(({ sure }) => sure)).toEqual(['likely', 'sure']);
  });

  it('hands over what is ticked, and nothing that was not found', () => {
    const from = takenOver(draftOf(read), 'p', 'km');
    expect(from).toMatchObject({ paper: 'p', day: '2026-04-03', shop: 'Parts Heron', cost: '19.00', currency: 'EUR', reading: '98420', note: '' });
    expect(from.parts.map(({ name, number, measure }) => [name, number, measure])).toEqual([['Oil filter', 'QF 20-118', 'piece'], ['', 'Z 1', 'piece']]);
    expect(takenOver(draftOf(nothing), 'p', 'km')).toMatchObject({ day: '', shop: '', cost: '', parts: [], volume: '', reading: '' });
  });

  it('warns of a number however it is written, and of no other', () => {
    const warning = { mark: 'superseded', instead: 'QF 20-119' };
    const warned = [{ number: 'QF20.118', warning }];
    expect(['qf 20-118', 'QF 20-119', ''].map((number) => warningOf(number, warned))).toEqual([warning, undefined, undefined]);
  });

  it('keeps a tax in the note when it is ticked', () => {
    const draft = draftOf(read);
    expect(takenOver({ ...draft, tax: draft.tax.map((tax) => ({ ...tax, taken: true })) }, 'p', 'km').note).toContain('3.03 EUR');
  });

  it('takes no reading in another unit', () => {
    expect(takenOver(draftOf(read), 'p', 'mi').reading).toBe('');
  });

  it('of two days believes none before the owner has chosen', () => {
    const day = { value: '2026-04-03', or: '2026-03-04', sure: 'doubtful', area };
    const draft = draftOf({ ...read, fields: { ...read.fields, day } });
    expect(draft.day?.choices).toEqual(['2026-03-04', '2026-04-03']);
    expect([asksDay(draft), takenOver(draft, 'p', 'km').day]).toEqual([true, '']);
    expect(asksDay(draftOf(read))).toBe(false);
  });

  it('of a pump is a fill, whose lines are no parts', () => {
    const seen = { sure: 'sure', area };
    const figures = { volume: seen, price: { ...seen, sure: 'likely' }, total: null };
    const fuel = { volume: '41.30', unit: 'litre', price: '1.689', total: '69.76', sure: 'likely', area, figures };
    const draft = draftOf({ ...read, fields: { ...read.fields, total: null, numbers: [], fuel } });
    expect(draft.fuel?.price.seen?.sure).toBe('likely');
    expect(takenOver(draft, 'p', 'km')).toMatchObject({ parts: [], volume: '41.30', volumeUnit: 'litre', price: '1.689', cost: '69.76' });
  });
});

it('says the sums that do not agree with both figures', () => {
  const sum = (number: string) => ({ number, currency: 'EUR' });
  const check = { kind: 'lines', worked_out: sum('18.50'), printed: sum('19.00'), agrees: false };
  const [said, ...more] = disagreements([check, { ...check, agrees: true }]);
  expect([said?.includes('18.50\u00a0EUR'), said?.includes('19.00\u00a0EUR'), more.length]).toEqual([true, true, 0]);
});

describe('the window onto the photo', () => {
  it('shows the area with paper around it', () => {
    const { left, top, width, height } = windowOn(area);
    expect(left).toBeLessThan(0.1);
    expect(top).toBeLessThan(0.2);
    expect(left + width).toBeGreaterThan(0.6);
    expect(top + height).toBeGreaterThan(0.22);
  });

  it('stays on the photo', () => {
    const { left, top, width, height } = windowOn([0, 0, 1, 1]);
    expect([left, top, width, height]).toEqual([0, 0, 1, 1]);
  });
});
