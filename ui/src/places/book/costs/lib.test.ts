// Costs as bars and rows.

import { describe, expect, it } from 'vitest';
import type { BillView } from '../../../door/types';
import { barsOf, barTotal, billRows, billsIn, costSentence, lastMonths, overText, periodText, perRows } from './lib';

const CLASSES = ['fuel', 'parts', 'work', 'duties'];

function bill(period: string, currency: string, decimals: number, minors: number[], over = true): BillView {
  const written = (minor: number) => ({ number: (minor / 10 ** decimals).toFixed(decimals), currency });
  const parts = CLASSES.map((name, index) => ({ class: name, money: written(minors[index] ?? 0), minor: minors[index] ?? 0 }));
  return { period, currency, decimals, parts, total: written(minors.reduce((sum, minor) => sum + minor, 0)), over };
}

const bills = [bill('2025', 'EUR', 2, [123_450, 20_000, 0, 9_900]), bill('2026', 'EUR', 2, [80_000, 0, 5_000, 0], false), bill('2026', 'JPY', 0, [7_296])];

describe('the bars', () => {
  it('are in main units, by the decimals of their currency', () => {
    expect(barsOf(billsIn(bills, 'EUR'), ['2026', '2025'], CLASSES)).toEqual([
      { name: '2026', amounts: [800, 0, 50, 0] },
      { name: '2025', amounts: [1234.5, 200, 0, 99] },
    ]);
    expect(barsOf(billsIn(bills, 'JPY'), ['2026'], CLASSES)[0]?.amounts).toEqual([7296, 0, 0, 0]);
  });

  it('are empty for a month without a bill', () => {
    expect(barsOf([], ['2026-05'], CLASSES)).toEqual([{ name: 'May\u00a02026', amounts: [0, 0, 0, 0] }]);
  });

  it('say their sum in whole units', () => {
    expect(barTotal({ name: '', amounts: [1234.5, 200, 0, 99] })).toBe('1\u00a0534'); // 1533.50
  });
});

describe('the months', () => {
  it('are the last twelve, over the turn of the year', () => {
    const months = lastMonths('2026-03-31');
    expect(months).toHaveLength(12);
    expect([months[0], months[2], months[3], months[11]]).toEqual(['2026-03', '2026-01', '2025-12', '2025-04']);
  });

  it('are named with their year', () => {
    expect([periodText('2026'), periodText('2026-05')]).toEqual(['2026', 'May\u00a02026']);
  });
});

describe('the tables', () => {
  it('have every class and the sum, and say what is not over', () => {
    expect(billRows(billsIn(bills, 'EUR'), CLASSES)).toEqual([
      ['2025', '1\u00a0234.50', '200.00', '0.00', '99.00', '1\u00a0533.50'],
      ['2026, so far', '800.00', '0.00', '50.00', '0.00', '850.00'],
    ]);
  });

  it('have what one kilometre came to', () => {
    const one = {
      period: 'last-year', from: '2025-11-25', to: '2026-11-25', distance: { count: 12_400, unit: 'km' as const }, currency: 'EUR', total: '0.213',
      parts: [{ class: 'fuel', number: '0.081' }],
    };
    expect(perRows([one], CLASSES)).toEqual([['Fuel', '0.081'], ['Parts', '0.000'], ['Work', '0.000'], ['Duties', '0.000'], ['All together', '0.213']]);
    expect(overText(one)).toBe('Last 12 months, 12\u00a0400\u00a0km');
    expect(overText({ ...one, period: 'all' })).toMatch(/^All that is known/);
  });

  it('are told in a sentence', () => {
    expect(costSentence(billsIn(bills, 'EUR'), 'EUR')).toBe('Costs from 2025 to 2026 in EUR; the most was 1\u00a0533.50\u00a0EUR in 2025.');
    expect(costSentence([], 'EUR')).toBe('');
  });
});
