import { describe, expect, it } from 'vitest';

import { marksFor, yearOf, yearsBetween } from './plot';

describe('the lines of the drawing', () => {
  it.each([
    [[31_000, 148_420], [0, 50_000, 100_000, 150_000]],
    [[101_000, 148_420], [100_000, 120_000, 140_000, 160_000]],
    [[0, 9], [0, 5, 10]],
    [[7], [7, 8]],
    [[7, 8], [7, 8]],
    [[-5, 1_000], [-500, 0, 500, 1_000]],
    [[-(2 ** 31), 2 ** 31 - 1], [-4_000_000_000, -2_000_000_000, 0, 2_000_000_000, 4_000_000_000]],
  ])('around %j stand at %j', (readings, marks) => {
    expect(marksFor(readings)).toEqual(marks);
  });

  it('hold every reading, whatever they are, and are few', () => {
    for (let power = 0; power < 31; power += 1) {
      for (const low of [0, 1, 3, 999, -17]) {
        const high = low + 2 ** power + (power % 3);
        const marks = marksFor([high, low]);
        expect(marks.length, `${low} to ${high}`).toBeLessThanOrEqual(5);
        expect(marks[0]).toBeLessThanOrEqual(low);
        expect(marks[marks.length - 1]).toBeGreaterThanOrEqual(high);
      }
    }
  });
});

describe('the years of the drawing', () => {
  const day = (text: string): number => Date.parse(text) / 86_400_000;

  it('are those that begin between two days, and no more than fit', () => {
    expect(yearsBetween(day('2018-03-01'), day('2021-01-01'), 9)).toEqual([[2019, day('2019-01-01')], [2020, day('2020-01-01')], [2021, day('2021-01-01')]]);
    expect(yearsBetween(day('2018-03-01'), day('2026-01-01'), 4).map(([year]) => year)).toEqual([2020, 2022, 2024, 2026]);
    expect(yearsBetween(day('1900-01-01'), day('2199-12-31'), 6).map(([year]) => year)).toEqual([1950, 2000, 2050, 2100, 2150]);
    expect(yearsBetween(day('2018-03-01'), day('2018-12-31'), 6)).toEqual([[2018, day('2018-03-01')]]);
  });

  it('are of the calendar', () => {
    expect([yearOf(0), yearOf(-1), yearOf(day('2024-12-31')), yearOf(day('2025-01-01'))]).toEqual([1970, 1969, 2024, 2025]);
  });
});
