// The lines to which a paper may belong, in their order and in words.

import { expect, it } from 'vitest';
import type { TieLine } from '../../../door/types';
import { nothingRead } from '../../../parts/from-paper';
import { sorted, tieText } from './tie';

const line = (subject: string, date: string, number: string): TieLine => ({
  subject,
  kind: 'bought',
  day: date,
  items: [],
  place: '',
  cost: { number, currency: 'EUR' },
});
const lines = [line('none', '2026-05-01', '5.00'), line('cost', '2026-04-01', '19.00'), line('both', '2026-03-04', '19.00')];

it('has the lines that fit the day or the cost first, and what fits both before them', () => {
  const { fitting, others } = sorted(lines, { ...nothingRead('p'), day: '2026-03-04', cost: '19,00' });
  expect([fitting, others].map((some) => some.map(({ subject }) => subject))).toEqual([['both', 'cost'], ['none']]);
});

it('stays in its order when nothing was read', () => {
  expect(sorted(lines, undefined)).toEqual({ fitting: [], others: lines });
  expect(sorted(lines, nothingRead('p')).others).toEqual(lines);
});

it('tells the kinds of line apart', () => {
  const visit: TieLine = { ...line('v', '2026-03-04', '19.00'), kind: 'visit', items: [{ of: 'own', name: 'Roof rail' }], place: 'Garage Plover', cost: null };
  expect(tieText(visit)).toBe('4\u00a0Mar\u00a02026, Roof rail, Garage Plover');
  const said = ['fill', 'bought'].map((kind) => tieText({ ...visit, kind }));
  expect(new Set(said).size).toBe(2);
});
