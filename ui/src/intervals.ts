// Intervals in words: as they are printed and, where the car counts in the other unit, about as much in its own.

import type { IntervalView, Reading } from './door/types';
import { distance, reading } from './format';
import { say } from './words';

/** An international mile is exactly so many kilometres (agreement of 1959: 0.9144 m to the yard, 1 760 yards). */
export const KM_PER_MILE = 1.609_344;

/**
 * `15 000 km or 12 months`, or `15 000 km (about 9 300 mi) or 12 months` for a car that counts miles; nothing when
 * the interval names neither. `unit` is the one that the car counts.
 */
export function interval({ distance: far, months }: IntervalView, unit: string): string {
  const parts = [far && distanceText(far, unit), months && say('interval-months', { months: Number(months) })];
  const [one, two] = parts.filter((part) => part !== null && part !== '');
  if (one && two) return say('interval-both', { distance: one, months: two });
  return one || two || '';
}

/** Whether an interval is one month and nothing else, which nobody calls 'every 1 month'. */
export function isMonthly({ distance: far, months }: IntervalView): boolean {
  return far === null && months !== null && Number(months) === 1;
}

/** A distance in kilometres or miles in the other of the two, as exact as a rounded number should be. */
export function aboutInOther({ count, unit }: Reading): Reading {
  return unit === 'km' ? { count: rounded(count / KM_PER_MILE), unit: 'mi' } : { count: rounded(count * KM_PER_MILE), unit: 'km' };
}

function distanceText(printed: Reading, unit: string): string {
  if (printed.unit === unit) return reading(printed);
  const about = aboutInOther(printed);
  return say('interval-distance-about', { printed: reading(printed), about: distance(about.count, about.unit) });
}

/** To two figures, or three where the first of them is a 1, so that from 20 on it is never further off than 2.5 %. */
function rounded(value: number): number {
  const figures = /^[0.]*1/.test(String(value)) ? 3 : 2;
  return Math.round(Number(value.toPrecision(figures)));
}
