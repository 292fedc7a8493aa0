// The readings over the years, as a small drawing: one scale, a dot a reading, gaps dashed, what falls or jumps marked.
//
// Drawn here in a few lines because a library of scales is larger than the rest of the page. Whoever cannot see it has
// its label, and every reading in the list of visits.

import type { Claims, InstrumentChange } from './claims';
import { el, svg } from './dom';
import { falls, gaps, jumps, pairs, type Point, trailOf } from './trail';
import { DAY_MS, type Words } from './words';

const HEIGHT = 200;
/** Room under the drawing for the years, and above it for the number on the topmost line. */
const FOOT = 22;
const HEAD = 20;
/** Room at the sides for half a dot and half a year. */
const SIDE = 18;
/** No more lines than this, and no year nearer to the next. */
const LINES = 4;
const YEAR_WIDTH = 48;

/** The drawing, so many pixels wide; none of fewer than two days. */
export function plot(claims: Claims, words: Words, width: number): HTMLElement | null {
  const trail = trailOf(claims);
  const { all } = trail;
  const [first, last] = [all[0] as Point, all[all.length - 1] as Point];
  if (first.day === last.day) return null;
  const open = gaps(claims, trail);
  const end = Math.max(last.day, ...open.map(([, to]) => to.day));
  const changes = claims.instruments.filter(({ day }) => day > first.day && day <= last.day).sort((one, other) => one.day - other.day);
  const marks = marksFor([...all.map(({ reading }) => reading), ...changes.flatMap(({ oldReading, newReading }) => [oldReading, newReading])]);
  const x = scale(first.day, end, SIDE, width - SIDE);
  const y = scale(marks[0] as number, marks[marks.length - 1] as number, HEIGHT - FOOT, HEAD);
  const at = ({ day, reading }: { day: number; reading: number }): string => `${x(day)} ${y(reading)}`;
  const odd = pairs(all).filter((pair) => falls(pair) || jumps(claims, pair)).map(([, to]) => to);
  const values = { count: all.length, reading: words.distance(first.reading, claims.unit), day: words.day(first.day), shown: words.distance(last.reading, claims.unit), then: words.day(last.day) };
  const drawing = svg('svg', { viewBox: `0 0 ${width} ${HEIGHT}`, role: 'img', 'aria-label': words.say('plot', values) },
    ...marks.map((mark) => svg('path', { class: 'hair', d: `M0 ${y(mark)}H${width}` })),
    ...marks.map((mark) => svg('text', { x: 0, y: y(mark) - 4 }, words.number(mark))),
    ...yearsBetween(first.day, end, (width - 2 * SIDE) / YEAR_WIDTH).map(([year, day]) => svg('text', { class: 'year', x: x(day), y: HEIGHT - 4 }, String(year))),
    svg('path', { class: 'way', d: line(all, changes, new Set(open.map(([from]) => from)), at) }),
    svg('path', { class: 'gap', d: open.map(([from, to]) => `M${at(from)}L${at(to)}`).join('') }),
    svg('path', { class: 'dots', d: all.map((point) => `M${at(point)}h0`).join('') }),
    svg('path', { class: 'odd', d: odd.map((point) => `M${at(point)}m0-6l6 6-6 6-6-6z`).join('') }),
  );
  return el('figure', {}, drawing, el('figcaption', { class: 'small' }, caption(open.length > 0, odd.length > 0, words)));
}

function caption(gap: boolean, odd: boolean, words: Words): string {
  return [gap && words.say('plot-gap'), odd && words.say('plot-odd')].filter(Boolean).join(' ');
}

/** From point to point but for the gaps, and down to what a new instrument began with. */
function line(all: readonly Point[], changes: readonly InstrumentChange[], open: ReadonlySet<Point>, at: (place: { day: number; reading: number }) => string): string {
  const steps = pairs(all).map(([from, to]) => {
    const between = changes.filter(({ day }) => day > from.day && day <= to.day);
    return between.map(({ day, oldReading, newReading }) => `L${at({ day, reading: oldReading })}M${at({ day, reading: newReading })}`).join('') + (open.has(from) ? 'M' : 'L') + at(to);
  });
  return `M${at(all[0] as Point)}${steps.join('')}`;
}

/** Round numbers around all of these, at equal steps, not more than a few. */
export function marksFor(readings: readonly number[]): number[] {
  const [low, high] = [Math.min(...readings), Math.max(...readings)];
  const rough = Math.max(high - low, 1) / (LINES - 1);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = Math.max(([1, 2, 5].map((digit) => digit * power).find((round) => round >= rough)) ?? 10 * power, 1);
  const start = Math.floor(low / step) * step;
  const count = Math.max(Math.ceil((high - start) / step), 1);
  return Array.from({ length: count + 1 }, (_, at) => start + at * step);
}

/** The first days of the years between two days, of so many at most, else of every second or fifth one and so on; within one year that year. */
export function yearsBetween(first: number, last: number, most: number): Array<readonly [number, number]> {
  const [from, to] = [yearOf(first) + 1, yearOf(last)];
  const step = [1, 2, 5, 10, 20, 50].find((step) => (to - from + 1) / step <= most) ?? 100;
  if (from > to) return [[to, first]];
  const years = Array.from({ length: to - from + 1 }, (_, at) => from + at);
  return years.filter((year) => year % step === 0).map((year) => [year, Date.UTC(year, 0) / DAY_MS] as const);
}

/** The year of a day counted from 1970-01-01. */
export function yearOf(day: number): number {
  return new Date(day * DAY_MS).getUTCFullYear();
}

function scale(from: number, to: number, start: number, end: number): (value: number) => number {
  return (value) => Math.round(10 * (start + ((value - from) / (to - from)) * (end - start))) / 10;
}
