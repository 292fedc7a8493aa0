// How far a car had gone at each visit of its card, and what of it does not add up.
//
// The bounds are common practice; `card::questions` in the core says where each comes from.

import type { Claims, InstrumentChange, Reading } from './claims';

/** A reading with how far the car had gone by then, across replaced instruments. */
export interface Point extends Reading {
  readonly travelled: number;
}

/** The way of a car in order of day and, within a day, of distance: its visits, and these with the latest reading. */
export interface Trail {
  readonly visits: readonly Point[];
  readonly all: readonly Point[];
  readonly latest: Point;
}

/** Two points, the later one second. */
export type Pair = readonly [Point, Point];

/** Longer than so many days without a visit is asked about. */
export const GAP_DAYS = 731;
const STEADY_DAYS = 90;
/** No stretch counts as longer, so that weighing two of them stays exact. */
const LONGEST = 1e9;

/** A longer way without one is, in whole units of the card; and so is a farther one in a day, and in a day of many. */
export const GAP = { km: 30_000, mi: 18_641 };
const FAST = { km: 2_500, mi: 1_553 };
const STEADY = { km: 400, mi: 249 };

/** The way of the car. */
export function trailOf({ visits, latest, instruments }: Claims): Trail {
  const point = ({ day, reading }: Reading): Point => ({ day, reading, travelled: travelled(day, reading, instruments) });
  const last = point(latest);
  const points = visits.map(point).sort(inOrder);
  return { visits: points, all: [...points, last].sort(inOrder), latest: last };
}

function inOrder(one: Point, other: Point): number {
  return one.day - other.day || one.travelled - other.travelled;
}

/** On the day of a replacement a reading belongs to the instrument whose value is nearer; where both are, to the new one. */
function travelled(day: number, reading: number, instruments: readonly InstrumentChange[]): number {
  const replaced = instruments.filter((change) =>
    change.day < day || (change.day === day && Math.abs(reading - change.newReading) <= Math.abs(reading - change.oldReading)));
  return replaced.reduce((sum, { oldReading, newReading }) => sum + oldReading - newReading, reading);
}

/** Whether a reading is lower than the one before it. */
export function falls([from, to]: Pair): boolean {
  return to.travelled < from.travelled;
}

/** Whether no car goes so far in the time. */
export function jumps({ unit }: Claims, pair: Pair): boolean {
  const time = Math.max(days(pair), 1);
  return way(pair) > (time < STEADY_DAYS ? FAST : STEADY)[unit] * time;
}

/** The stretches without a visit that are longer than the bounds, the last of them up to the day of issue. */
export function gaps(claims: Claims, { visits, latest }: Trail): Pair[] {
  const ends = visits.length === 0 ? [] : [...visits, { ...latest, day: claims.issued }];
  return pairs(ends).filter((pair) => days(pair) > GAP_DAYS || (way(pair) > GAP[claims.unit] && !jumps(claims, pair)));
}

/** Each with the one after it. */
export function pairs(points: readonly Point[]): Pair[] {
  return points.slice(1).map((to, at) => [points[at] as Point, to]);
}

/** How many days lie between. */
export function days([from, to]: Pair): number {
  return to.day - from.day;
}

/** How far the car went between. */
export function way([from, to]: Pair): number {
  return Math.min(to.travelled - from.travelled, LONGEST);
}
