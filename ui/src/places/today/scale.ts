// How the road is measured: where a day lies on the strip, and which dates and readings stand along it, in rem.

import type { EstimateView } from '../../door/types';
import { dayTime } from '../../format';

const DAY_MS = 86_400_000;
const YEAR_DAYS = 365.25;

/** From this width on there is room for words on the strip. */
export const WORDY_WIDTH = 40;
/** The width of what hangs on the strip in words. */
export const LABEL_WIDTH = 9.5;

export interface Tick {
  x: number;
  /** A moment under the road, or a reading along it in units of the instrument. */
  value: number;
}

export interface Scale {
  startDays: number;
  endDays: number;
  remPerDay: number;
  width: number;
}

/** One year, or two when hardly anything falls within one. */
export function horizonDays(days: number[]): number {
  const within = days.filter((day) => day >= 0 && day <= YEAR_DAYS).length;
  return within >= 3 ? 366 : 731;
}

export function layScale(earliest: number, horizon: number, width: number): Scale {
  const room = width >= WORDY_WIDTH ? width - LABEL_WIDTH : width - 1;
  const past = Math.min(Math.max(-earliest * 1.08, horizon * 0.09), horizon * 0.4);
  return { startDays: -past, endDays: horizon, remPerDay: room / (past + horizon), width: room };
}

export function position(days: number, { startDays, remPerDay }: Scale): number {
  return (days - startDays) * remPerDay;
}

/** The first day of every first, second, third or sixth month, as many as there is room for. */
export function dateTicks(today: string, scale: Scale): Tick[] {
  const now = new Date(dayTime(today));
  const step = [1, 2, 3, 6, 12].find((months) => months * 30.4 * scale.remPerDay >= 3.4) ?? 12;
  const ticks: Tick[] = [];
  for (let month = -12; month <= 25; month += 1) {
    const value = Date.UTC(now.getUTCFullYear(), now.getUTCMonth() + month, 1);
    const days = (value - now.getTime()) / DAY_MS;
    const inside = days > scale.startDays && days < scale.endDays;
    if (inside && new Date(value).getUTCMonth() % step === 0) ticks.push({ x: position(days, scale), value });
  }
  return ticks;
}

/** Round readings along the road, at the pace of this car. */
export function distanceTicks({ likely, per_year }: EstimateView, scale: Scale): Tick[] {
  if (per_year <= 0) return [];
  const perDay = per_year / YEAR_DAYS;
  const step = roundStep((5.5 / scale.remPerDay) * perDay);
  const first = Math.ceil((likely.count + scale.startDays * perDay) / step) * step;
  const ticks: Tick[] = [];
  for (let value = first; value <= likely.count + scale.endDays * perDay; value += step) {
    const x = position((value - likely.count) / perDay, scale);
    if (x > 1.5 && x < scale.width) ticks.push({ x, value });
  }
  return ticks;
}

/** The smallest of 1, 2 and 5 times a power of ten that is at least this. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(least, 1)));
  return [1, 2, 5, 10].map((times) => times * power).find((step) => step >= least) ?? 10 * power;
}
