// The road ahead: where on the strip each thing that is due hangs, and what stands along and under it.
// All lengths are in rem, so that larger text makes the strip simpler rather than crowded.

import type { DueView, EstimateView, StateKey, TodayView } from '../../door/types';
import { dayTime, daysBetween } from '../../format';

const DAY_MS = 86_400_000;
const YEAR_DAYS = 365.25;

/** From this width on there is room for words on the strip. */
export const WORDY_WIDTH = 40;
/** The width of what hangs on the strip in words. */
export const LABEL_WIDTH = 9.5;

/** Two marks of one state that are nearer than this become one. */
const MARK_WIDTH = 2.25;
const LINE = 1.3;
const LETTERS_PER_LINE = 16;
const DEEPEST_STAIRS = 15;

export interface Mark {
  /** From the left end of the strip. */
  x: number;
  /** From the road down to the words. */
  y: number;
  /** The state of all that hangs there. */
  state: StateKey;
  due: DueView[];
  /** What hangs there in words, a line each before any of them is broken. */
  words: string[];
  /** It lies further back than the strip reaches. */
  before: boolean;
}

export interface Tick {
  x: number;
  /** A moment under the road, or a reading along it in units of the instrument. */
  value: number;
}

export interface Road {
  now: number;
  marks: Mark[];
  dates: Tick[];
  distances: Tick[];
  /** How far down the words reach. */
  depth: number;
  /** Items that are due beyond the end of the strip. */
  further: number;
  /** Items that nobody ever recorded. */
  unrecorded: number;
}

interface Scale {
  startDays: number;
  remPerDay: number;
  width: number;
}

/** Lays the road out on a strip of this width; `wordsOf` says what hangs at one place, line by line. */
export function layRoad(
  { due, today, estimate }: Pick<TodayView, 'due' | 'today' | 'estimate'>,
  width: number,
  wordsOf: (due: DueView[]) => string[],
): Road {
  const dated = due.flatMap((item) => (item.day === null ? [] : [{ item, days: daysBetween(today, item.day) }]));
  const horizon = horizonDays(dated.map(({ days }) => days));
  const scale = layScale(Math.min(0, ...dated.map(({ days }) => days)), horizon, width);
  const marks = hang(
    dated.filter(({ days }) => days <= horizon),
    scale,
  );
  for (const mark of marks) mark.words = wordsOf(mark.due);
  if (width >= WORDY_WIDTH) dropWords(marks);
  return {
    now: position(0, scale),
    marks,
    dates: dateTicks(today, horizon, scale),
    distances: estimate === null ? [] : distanceTicks(estimate, horizon, scale),
    depth: Math.max(0, ...marks.map(bottom)),
    further: dated.filter(({ days }) => days > horizon).length,
    unrecorded: due.filter(({ state }) => state === 'no-record').length,
  };
}

/** One year, or two when hardly anything falls within one. */
function horizonDays(days: number[]): number {
  const within = days.filter((day) => day >= 0 && day <= YEAR_DAYS).length;
  return within >= 3 ? 366 : 731;
}

function layScale(earliest: number, horizon: number, width: number): Scale {
  const room = width >= WORDY_WIDTH ? width - LABEL_WIDTH : width - 1;
  const past = Math.min(Math.max(-earliest * 1.08, horizon * 0.09), horizon * 0.4);
  return { startDays: -past, remPerDay: room / (past + horizon), width: room };
}

function position(days: number, { startDays, remPerDay }: Scale): number {
  return (days - startDays) * remPerDay;
}

function hang(dated: { item: DueView; days: number }[], scale: Scale): Mark[] {
  const marks: Mark[] = [];
  for (const { item, days } of [...dated].sort((a, b) => a.days - b.days)) {
    const before = days < scale.startDays;
    const x = Math.max(position(days, scale), MARK_WIDTH / 2);
    const last = marks.at(-1);
    if (last?.state === item.state && x - last.x < MARK_WIDTH) {
      last.due.push(item);
    } else {
      marks.push({ x: last ? Math.max(x, last.x + MARK_WIDTH * 0.7) : x, y: 0, state: item.state, due: [item], words: [], before });
    }
  }
  return marks;
}

/**
 * Lets the words of each mark down until they touch no others, right to left, since words reach to the right
 * of their thread. A staircase keeps every thread clear of words; where it would go too deep, the words take
 * any room there is, and a thread may pass behind them.
 */
function dropWords(marks: Mark[]): void {
  const placed: Mark[] = [];
  for (const mark of [...marks].reverse()) {
    mark.y = Math.max(0, ...placed.filter((other) => beside(mark, other)).map(bottom));
    placed.push(mark);
  }
  if (Math.max(0, ...marks.map(bottom)) > DEEPEST_STAIRS) packWords(marks);
}

function packWords(marks: Mark[]): void {
  const placed: Mark[] = [];
  for (const mark of [...marks].reverse()) {
    mark.y = 0;
    const covered = () => placed.find((other) => beside(mark, other) && other.y < bottom(mark) && mark.y < bottom(other));
    for (let other = covered(); other; other = covered()) mark.y = bottom(other);
    placed.push(mark);
  }
}

/** Whether the words of a mark reach as far as another one to its right. */
function beside(mark: Mark, other: Mark): boolean {
  return other.x < mark.x + LABEL_WIDTH;
}

function bottom(mark: Mark): number {
  return mark.y + wordsHeight(mark);
}

function wordsHeight({ words }: Mark): number {
  return words.reduce((lines, text) => lines + linesOf(text), 0) * LINE + 0.6;
}

/** How many lines a text breaks into, a word that is too long for one included. */
function linesOf(text: string): number {
  let lines = 1;
  let room = LETTERS_PER_LINE;
  for (const { length } of text.split(/\s+/)) {
    if (length > room && room < LETTERS_PER_LINE) [lines, room] = [lines + 1, LETTERS_PER_LINE];
    lines += Math.ceil(length / LETTERS_PER_LINE) - 1;
    room -= (length % LETTERS_PER_LINE) + 1;
  }
  return lines;
}

/** The first day of every first, second, third or sixth month, as many as there is room for. */
function dateTicks(today: string, horizon: number, scale: Scale): Tick[] {
  const now = new Date(dayTime(today));
  const step = [1, 2, 3, 6, 12].find((months) => months * 30.4 * scale.remPerDay >= 3.4) ?? 12;
  const ticks: Tick[] = [];
  for (let month = -12; month <= 25; month += 1) {
    const value = Date.UTC(now.getUTCFullYear(), now.getUTCMonth() + month, 1);
    const days = (value - now.getTime()) / DAY_MS;
    const inside = days > scale.startDays && days < horizon;
    if (inside && new Date(value).getUTCMonth() % step === 0) ticks.push({ x: position(days, scale), value });
  }
  return ticks;
}

/** Round readings along the road, at the pace of this car. */
function distanceTicks({ likely, per_year }: EstimateView, horizon: number, scale: Scale): Tick[] {
  if (per_year <= 0) return [];
  const perDay = per_year / YEAR_DAYS;
  const step = roundStep((5.5 / scale.remPerDay) * perDay);
  const first = Math.ceil((likely.count + scale.startDays * perDay) / step) * step;
  const ticks: Tick[] = [];
  for (let value = first; value <= likely.count + horizon * perDay; value += step) {
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
