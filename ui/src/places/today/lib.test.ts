// The road: where things hang, what stands along it, and that no words cover one another.

import { describe, expect, it } from 'vitest';
import type { DueView, EstimateView, PlannedVisitView, StateKey } from '../../door/types';
import { layRoad, type Stop } from './lib';
import { LABEL_WIDTH, roundStep, WORDY_WIDTH } from './scale';

const today = '2026-11-25';
const estimate: EstimateView = {
  likely: { count: 98_020, unit: 'km' },
  low: { count: 97_500, unit: 'km' },
  high: { count: 98_600, unit: 'km' },
  since: { day: '2026-10-12', reading: { count: 96_300, unit: 'km' } },
  doubtful: null,
  per_year: 14_610,
};

function due(name: string, state: StateKey, day: string | null): DueView {
  const why = {
    interval: { distance: null, months: '12' },
    source: 'common-practice',
    source_name: '',
    phase: 'every' as const,
    from: null,
    tightened_by: [],
    goes_with: null,
    kind: null,
    seen: null,
  };
  return { item: { of: 'own', name }, state, day, between: null, reading: null, first: null, why, workshop: false, weight: 1, round: false };
}

function visit(day: string, ...names: string[]): PlannedVisitView {
  const items = names.map((name) => ({ item: { of: 'own' as const, name }, due: day, pinned: false, next: true, look: false, guide: null }));
  return { day, site: 'home', next: false, items, shares: [], minutes: 30, cost: null, unpriced: names.length, estimated: 0 };
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
const names = (at: Pick<Stop, 'items'>) => at.items.map((item) => (item.of === 'own' ? item.name : item.key));
const road = (width: number, items = plan, visits: PlannedVisitView[] = []) => layRoad({ due: items, visits, today, estimate }, width, names);

describe('the stops', () => {
  it('stand left of now when overdue and right of it when ahead', () => {
    const { now, stops } = road(60);
    for (const stop of stops) expect(stop.state === 'overdue' ? stop.x < now : stop.x > now).toBe(true);
  });

  it('hold everything that has a day within the strip, and count the rest', () => {
    const { stops, further, unrecorded } = road(60);
    expect(stops.flatMap((stop) => stop.due)).toHaveLength(6);
    expect({ further, unrecorded }).toEqual({ further: 1, unrecorded: 1 });
  });

  it('become one where they would cover one another, but never across states', () => {
    const { stops } = road(20);
    expect(stops.some((stop) => stop.due.length > 1)).toBe(true);
    for (const stop of stops) expect(new Set(stop.due.map(({ state }) => state)).size).toBe(1);
    for (const [left, right] of pairs(stops)) expect(right.x - left.x).toBeGreaterThan(1.5);
  });

  it('say that they lie further back than the strip reaches', () => {
    const { stops } = road(60, [...plan, due('Coolant', 'overdue', '2020-01-01')]);
    expect(stops[0]).toMatchObject({ before: true, state: 'overdue' });
    expect(stops[0]?.x).toBeGreaterThan(0);
  });
});

describe('visits', () => {
  const together = visit('2026-12-12', 'Engine oil and filter', 'Wiper blades', 'Tyres');

  it('are one stop for all that they gather, while what is overdue also stays left of now', () => {
    const { now, stops } = road(60, plan, [together]);
    const stop = stops.find(({ visits }) => visits.length > 0);
    expect(stop && names(stop)).toEqual(['Engine oil and filter', 'Wiper blades', 'Tyres']);
    expect(stop?.state).toBe('soon');
    expect(stops.filter(({ x }) => x < now).flatMap(names)).toContain('Engine oil and filter');
    expect(stops.filter((other) => other !== stop).flatMap(names)).not.toContain('Tyres');
  });

  it('become one with no other thing, and stay on the strip', () => {
    const near = ['2027-10-20', '2027-11-02', '2027-11-15', '2027-11-24'].map((day, index) => visit(day, `Job ${index}`));
    const { stops } = road(20, [...plan, due('Job by itself', 'ahead', '2027-11-03')], near);
    for (const { visits, due: alone } of stops) expect(visits.length === 0 || alone.length === 0).toBe(true);
    for (const { x } of stops) expect(x).toBeLessThanOrEqual(19);
  });

  it('span the days on which their jobs may fall', () => {
    const wide = { ...due('Tyres', 'soon', '2026-12-12'), between: { early: '2026-12-01', late: '2027-02-20' } };
    const { stops } = road(60, [wide], [together]);
    const [stop] = stops;
    expect(stop && stop.span.from < stop.x && stop.x < stop.span.to).toBe(true);
  });
});

it('keeps the short round off the road', () => {
  const { stops, further } = road(60, [{ ...due('Tyre pressures', 'overdue', '2026-11-20'), round: true }]);
  expect({ stops, further }).toEqual({ stops: [], further: 0 });
});

describe('the words', () => {
  it('never cover one another on a wide strip', () => {
    const crowd = Array.from({ length: 14 }, (_, index) => due(`Item of a rather long name ${index}`, 'ahead', `2027-${String(1 + (index % 9)).padStart(2, '0')}-1${index % 7}`));
    const { stops, depth } = road(WORDY_WIDTH + 10, [...plan, ...crowd]);
    const tall = (stop: Stop) => stop.words.length * 1.3;
    for (const one of stops) {
      expect(one.y + tall(one)).toBeLessThanOrEqual(depth);
      for (const other of stops) {
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
    expect(layRoad({ due: plan, visits: [], today, estimate: null }, 60, names).distances).toEqual([]);
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
