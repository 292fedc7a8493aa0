// How a plot is measured: its frame in pixels, its two scales, what stands along them, and what is drawn between them.

import { scaleLinear, scaleUtc, type ScaleLinear, type ScaleTime } from 'd3-scale';
import { area, curveLinear, curveStepBefore, line } from 'd3-shape';

/** A value at a moment (milliseconds since 1970, UTC). */
export interface Point {
  time: number;
  value: number;
}

/** Between which two values something lies at a moment. */
export interface Between {
  time: number;
  low: number;
  high: number;
}

/** What is drawn on: the sheet and the edges of the plot on it, all in pixels. */
export interface Frame {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** The size of the page's text, by which everything on the plot grows. */
  rem: number;
}

export interface Tick {
  at: number;
  words: string;
}

export interface Scales {
  x: ScaleTime<number, number>;
  y: ScaleLinear<number, number>;
  frame: Frame;
}

/** What a frame holds besides the plot, in rem. */
export interface Room {
  /** Of the plot itself. */
  height: number;
  /** Above it. */
  above: number;
  /** The longest words beside it, in letters. */
  letters: number;
}

/** A letter of the words along the axes is about so wide, in rem. */
const LETTER = 0.47;
/** One mark of the time axis takes so much room, in rem. */
const TICK_WIDTH = 3.6;
/** One mark of the value axis takes so much room, in rem. */
const TICK_HEIGHT = 2.2;
const BELOW = 1.6;
const DAY_MS = 86_400_000;

/** The frame on a sheet of this width. */
export function frameOf(pixels: number, rem: number, { height, above, letters }: Room): Frame {
  const width = Math.max(pixels, 10 * rem);
  const top = above * rem;
  const bottom = top + height * rem;
  return { width, height: bottom + BELOW * rem, left: (letters * LETTER + 0.6) * rem, right: width - 0.7 * rem, top, bottom, rem };
}

/** The first and the last moment of a plot; a plot of one moment has a day around it. */
export function spanOf(times: number[]): [number, number] {
  const [from, to] = [Math.min(...times), Math.max(...times)];
  return from < to ? [from, to] : [from - DAY_MS, to + DAY_MS];
}

/** The scales for these moments and values; the values end on round numbers. */
export function scalesOf(frame: Frame, times: [number, number], values: number[]): Scales {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  // Values that are all one need room around them; a tenth is enough to see that nothing moved.
  const around = low < high ? (high - low) * 0.05 : Math.max(Math.abs(low) * 0.1, 1);
  const x = scaleUtc().domain(times).range([frame.left, frame.right]);
  const y = scaleLinear().domain([low - around, high + around]).range([frame.bottom, frame.top]);
  return { x, y: y.nice(lines(frame)), frame };
}

/** What stands beside the plot. */
export function valueTicks({ y, frame }: Scales, words: (value: number) => string): Tick[] {
  return y.ticks(lines(frame)).map((value) => ({ at: y(value), words: words(value) }));
}

/** What stands under the plot: years, months or days, as many as there is room for. */
export function timeTicks({ x, frame }: Scales, words: (time: number) => string): Tick[] {
  const most = Math.max(2, Math.floor((frame.right - frame.left) / (TICK_WIDTH * frame.rem)));
  return x.ticks(most).map((time) => ({ at: x(time), words: words(time.getTime()) }));
}

/** How many lines of the value axis there is room for. */
function lines({ top, bottom, rem }: Frame): number {
  return Math.max(2, Math.floor((bottom - top) / (TICK_HEIGHT * rem)));
}

/** The path from point to point, straight, or holding each value back to the point before it. */
export function pathOf(points: Point[], { x, y }: Scales, held = false): string {
  const draw = line<Point>((point) => x(point.time), (point) => y(point.value));
  return draw.curve(held ? curveStepBefore : curveLinear)(points) ?? '';
}

/** The path around everything between two values. */
export function bandOf(between: Between[], { x, y }: Scales): string {
  return area<Between>((one) => x(one.time), (one) => y(one.low), (one) => y(one.high))(between) ?? '';
}
