// Intervals in words, in both units.

import { describe, expect, it } from 'vitest';
import { aboutInOther, interval, isMonthly } from './intervals';

const far = { count: 15_000, unit: 'km' as const };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('an interval', () => {
  it('says which of two comes first', () => {
    expect(plain(interval({ distance: far, months: '12' }, 'km'))).toBe('15 000 km or 12 months, whichever comes first');
  });

  it('names the one that there is, half months included', () => {
    expect(plain(interval({ distance: far, months: null }, 'km'))).toBe('15 000 km');
    expect(interval({ distance: null, months: '1' }, 'km')).toBe('1 month');
    expect(interval({ distance: null, months: '4.5' }, 'km')).toBe('4.5 months');
    expect(interval({ distance: null, months: null }, 'km')).toBe('');
  });

  it('is said in the car’s unit as well where it is printed in the other', () => {
    expect(plain(interval({ distance: far, months: '12' }, 'mi'))).toBe('15 000 km (about 9 300 mi) or 12 months, whichever comes first');
    expect(plain(interval({ distance: { count: 7_500, unit: 'mi' }, months: null }, 'km'))).toBe('7 500 mi (about 12 100 km)');
  });

  it('is monthly when it is one month and nothing else', () => {
    expect(isMonthly({ distance: null, months: '1' })).toBe(true);
    expect(isMonthly({ distance: far, months: '1' })).toBe(false);
    expect(isMonthly({ distance: null, months: '1.5' })).toBe(false);
    expect(isMonthly({ distance: null, months: null })).toBe(false);
  });
});

// 1 760 yards of exactly 0.9144 m each, by the international yard and pound agreement of 1959 (from memory).
it('is never off by more than its rounding', () => {
  for (const count of [50, 1_000, 5_000, 7_500, 9_999, 10_000, 60_000, 105_000, 168_000, 1_000_000]) {
    const km = aboutInOther({ count, unit: 'mi' });
    const mi = aboutInOther({ count, unit: 'km' });
    expect([km.unit, mi.unit]).toEqual(['km', 'mi']);
    expect(Math.abs(km.count / (count * 1.609344) - 1)).toBeLessThanOrEqual(0.025);
    expect(Math.abs((mi.count * 1.609344) / count - 1)).toBeLessThanOrEqual(0.025);
  }
  expect(aboutInOther({ count: 105_000, unit: 'mi' }).count).toBe(169_000);
  expect(aboutInOther({ count: 100_000, unit: 'km' }).count).toBe(62_000);
});
