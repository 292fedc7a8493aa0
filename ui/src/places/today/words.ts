// Where the words of each stop stand below the road, so that none cover one another; lengths in rem.

import { LABEL_WIDTH } from './scale';

const LINE = 1.3;
const LETTERS_PER_LINE = 16;
const DEEPEST_STAIRS = 11;

/** What the words of a stop need to know of it. */
interface Worded {
  x: number;
  y: number;
  words: string[];
}

/**
 * Lets the words of each stop down until they touch no others, right to left, since words reach to the right
 * of their thread. A staircase keeps every thread clear of words; where it would go too deep, the words take
 * any room there is, and a thread may pass behind them.
 */
export function dropWords(stops: Worded[]): void {
  const placed: Worded[] = [];
  for (const stop of [...stops].reverse()) {
    stop.y = Math.max(0, ...placed.filter((other) => beside(stop, other)).map(bottom));
    placed.push(stop);
  }
  if (Math.max(0, ...stops.map(bottom)) > DEEPEST_STAIRS) packWords(stops);
}

function packWords(stops: Worded[]): void {
  const placed: Worded[] = [];
  for (const stop of [...stops].reverse()) {
    stop.y = 0;
    const covered = () => placed.find((other) => beside(stop, other) && other.y < bottom(stop) && stop.y < bottom(other));
    for (let other = covered(); other; other = covered()) stop.y = bottom(other);
    placed.push(stop);
  }
}

/** Whether the words of a stop reach as far as another one to its right. */
function beside(stop: Worded, other: Worded): boolean {
  return other.x < stop.x + LABEL_WIDTH;
}

/** How far down the words of a stop reach. */
export function bottom(stop: Worded): number {
  return stop.y + wordsHeight(stop);
}

function wordsHeight({ words }: Worded): number {
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
