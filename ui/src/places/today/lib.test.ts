// The road: where things hang, what stands along it, and that no words cover one another.

import { describe, expect, it } from 'vitest';
import type { DueView, EstimateView, StateKey } from '../../door/types';
import { LABEL_WIDTH, layRoad, roundStep, WORDY_WIDTH, type Mark } from './lib';

const today = '2026-11-25';
const estimate: EstimateView = {
  likely: { count: 98_020, unit: 'km' },
  low: { count: 97_500, unit: 'km' },
  high: { count: 98_600, unit: 'km' },
  since: { day: '2026-10-12', reading: { count: 96_300, unit: 'km' } },
  per_year: 14_610,
};

function due(name: string, state: StateKey, day: string | null): DueView {
  const why = {
    interval: { distance: null, months: '12' },
    source: 'common-practice',
    source_name: '',
    first_phase: false,
    from: null,
    tightened_by: [],
  };
  return { item: { of: 'own', name }, state, day, reading: null, first: null, why, workshop: false, weight: 1 };
}

const plan = [
  due('Brake fluid', 'overdue', '2026-08-03'),
  due('Engine oil and filter', 'overdue', '2026-11-03'),
  due('Wiper blades', 'soon', '2026-12-10'),
  due('Tyres', 'soon', '2026-12-12'),
  due('Cabin air filter', 'ahead', '2027-03-05'),
  due('Battery', 'ahead', '2027-10-01'),
  due('Timing belt', 'ahead', '2029-04-01'),
  due('Gearbox oil', 'no-record', null),
];
const names = (at: DueView[]) => at.map(({ item }) => (item.of === 'own' ? item.name : item.key));
const road = (width: number, items = plan) => layRoad({ due: items, today, estimate }, width, names);

describe('the marks', () => {
  it('stand left of now when overdue and right of it when ahead', () => {
    const { now, marks } = road(60);
    for (const mark of marks) expect(mark.state === 'overdue' ? mark.x < now : mark.x > now).toBe(true);
  });

  it('hold everything that has a day within the strip, and count the rest', () => {
    const { marks, further, unrecorded } = road(60);
    expect(marks.flatMap((mark) => mark.due)).toHaveLength(6);
    expect({ further, unrecorded }).toEqual({ further: 1, unrecorded: 1 });
  });

  it('become one where they would cover one another, but never across states', () => {
    const { marks } = road(20);
    expect(marks.some((mark) => mark.due.length > 1)).toBe(true);
    for (const mark of marks) expect(new Set(mark.due.map(({ state }) => state)).size).toBe(1);
    for (const [left, right] of pairs(marks)) expect(right.x - left.x).toBeGreaterThan(1.5);
  });

  it('say that they lie further back than the strip reaches', () => {
    const { marks } = road(60, [...plan, due('Coolant', 'overdue', '2020-01-01')]);
    expect(marks[0]).toMatchObject({ before: true, state: 'overdue' });
    expect(marks[0]?.x).toBeGreaterThan(0);
  });
});

describe('the words', () => {
  it('never cover one another on a wide strip', () => {
    const crowd = Array.from({ length: 14 }, (_, index) => due(`Item of a rather long name ${index}`, 'ahead', `2027-${String(1 + (index % 9)).padStart(2, '0')}-1${index % 7}`));
    const { marks, depth } = road(WORDY_WIDTH + 10, [...plan, ...crowd]);
    const tall = (mark: Mark) => mark.words.length * 1.3;
    for (const one of marks) {
      expect(one.y + tall(one)).toBeLessThanOrEqual(depth);
      for (const other of marks) {
        const apart = one === other || Math.abs(one.x - other.x) >= LABEL_WIDTH || one.y + tall(one) <= other.y || other.y + tall(other) <= one.y;
        expect(apart).toBe(true);
      }
    }
  });
});

describe('along the road', () => {
  it('stand round readings at the pace of the car', () => {
    const { distances } = road(60);
    expect(distances.length).toBeGreaterThan(2);
    for (const { value } of distances) expect(value % 1_000).toBe(0);
    const [first, second] = distances;
    expect(second && first && second.x - first.x).toBeGreaterThanOrEqual(5.4);
  });

  it('stands nothing without an estimate', () => {
    expect(layRoad({ due: plan, today, estimate: null }, 60, names).distances).toEqual([]);
  });

  it('stand the firsts of months under it, in order and with room', () => {
    for (const width of [20, 60]) {
      const { dates } = road(width);
      for (const { value } of dates) expect(new Date(value).getUTCDate()).toBe(1);
      for (const [left, right] of pairs(dates)) expect(right.x - left.x).toBeGreaterThan(3);
    }
  });
});

it('rounds a step up to 1, 2 or 5 times a power of ten', () => {
  expect([1, 3, 20, 21, 700, 5_001].map(roundStep)).toEqual([1, 5, 20, 50, 1_000, 10_000]);
});

function pairs<T>(row: T[]): [T, T][] {
  return row.slice(1).map((right, index) => [row[index] as T, right]);
}
