// Plots: what is measured out, how marks share a badge, how a bar is laid.

import { describe, expect, it } from 'vitest';
import { badgesOf } from './marks';
import { bandOf, frameOf, pathOf, scalesOf, spanOf, timeTicks, valueTicks } from './scales';
import { barScale, piecesOf } from './stack';
import { timeWords } from './time';

const utc = (text: string) => Date.parse(`${text}T00:00:00Z`);
const room = { height: 10, above: 2, letters: 4 };
const frame = frameOf(330, 17, room);

describe('the frame', () => {
  it('leaves room for the words beside and above, and grows with the text', () => {
    expect(frame).toMatchObject({ width: 330, top: 34, bottom: 204, rem: 17 });
    expect(frame.left).toBeCloseTo((4 * 0.47 + 0.6) * 17, 10);
    expect(frameOf(330, 34, room).left).toBeCloseTo(2 * frame.left, 10);
  });

  it('never becomes so narrow that the plot turns over', () => {
    const narrow = frameOf(0, 17, room);
    expect(narrow.right).toBeGreaterThan(narrow.left);
  });
});

describe('the scales', () => {
  const times = spanOf([utc('2026-01-01'), utc('2026-12-31')]);
  const scales = scalesOf(frame, times, [6.1, 7.4]);

  it('hold every value inside the frame', () => {
    expect(scales.x(times[0])).toBe(frame.left);
    expect(scales.x(times[1])).toBe(frame.right);
    for (const value of [6.1, 7.4]) {
      expect(scales.y(value)).toBeLessThan(frame.bottom);
      expect(scales.y(value)).toBeGreaterThan(frame.top);
    }
  });

  it('have a span and a height even for one value', () => {
    const at = utc('2026-05-01');
    expect(spanOf([at])).toEqual([utc('2026-04-30'), utc('2026-05-02')]);
    const one = scalesOf(frame, spanOf([at]), [0]);
    expect(one.y(0)).toBeCloseTo((frame.top + frame.bottom) / 2, 0);
  });

  it('stand on round values, and on no more of them than there is room for', () => {
    const values = valueTicks(scales, String).map(({ words }) => Number(words));
    expect(values.length).toBeGreaterThanOrEqual(3);
    const steps = values.slice(1).map((value, index) => (value - (values[index] ?? 0)).toFixed(6));
    expect(new Set(steps).size).toBe(1);
    const marks = timeTicks(scales, timeWords(...times));
    const gaps = marks.slice(1).map(({ at }, index) => at - (marks[index]?.at ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThan(2 * frame.rem);
  });

  it('draw a value that is held as a step and one that is not as a slope', () => {
    const points = [{ time: times[0], value: 6.1 }, { time: times[1], value: 7.4 }];
    const numbers = (path: string) => path.split(/[ML,]/).filter(Boolean).map(Number);
    const [low, high] = [scales.y(6.1), scales.y(7.4)];
    expect(numbers(pathOf(points, scales)).map(Math.round)).toEqual([frame.left, low, frame.right, high].map(Math.round));
    expect(numbers(pathOf(points, scales, true)).map(Math.round)).toEqual([frame.left, low, frame.left, high, frame.right, high].map(Math.round));
    expect(bandOf([{ time: times[0], low: 6.1, high: 7.4 }, { time: times[1], low: 6.1, high: 7.4 }], scales)).toMatch(/^M.*Z$/);
  });
});

describe('the words of a time axis', () => {
  const words = (from: string, to: string, at: string) => timeWords(utc(from), utc(to))(utc(at));

  it('are years, months or days', () => {
    expect(words('2020-01-01', '2026-01-01', '2024-01-01')).toBe('2024');
    expect(words('2025-06-01', '2026-06-01', '2026-01-01')).toBe('2026');
    expect(words('2025-06-01', '2026-06-01', '2025-10-01')).toBe('Oct');
    expect(words('2026-05-01', '2026-06-01', '2026-05-11')).toBe('11 May');
  });
});

describe('the badges', () => {
  const mark = (number: number, time: number) => ({ number, time });

  it('are shared by marks that stand too close, and threads go to each', () => {
    const badges = badgesOf([mark(3, 100), mark(1, 10), mark(2, 14)], (time) => time, () => 20);
    expect(badges.map(({ words, threads }) => [words, threads])).toEqual([['1–2', [10, 14]], ['3', [100]]]);
    expect(badges[0]?.at).toBe(12);
  });

  it('never touch each other, however many there are', () => {
    const widthOf = (words: string) => 8 * words.length + 10;
    const marks = Array.from({ length: 40 }, (_, index) => mark(index + 1, index * index * 0.25));
    const badges = badgesOf(marks, (time) => time, widthOf);
    expect(badges.length).toBeGreaterThan(3);
    expect(badges.flatMap(({ threads }) => threads)).toHaveLength(40);
    const gaps = badges.slice(1).map((badge, index) => badge.at - (badges[index]?.at ?? 0) - (widthOf(badge.words) + widthOf(badges[index]?.words ?? '')) / 2);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(0);
  });

  it('are none without marks', () => {
    expect(badgesOf([], (time) => time, () => 20)).toEqual([]);
  });
});

describe('a bar', () => {
  const bars = [{ name: '2025', amounts: [120, 0, 30] }, { name: '2026', amounts: [80, -20, 10] }];
  const pieces = piecesOf(bars, 3);

  it('has its amounts end to end, and nothing for what was nothing', () => {
    expect(pieces[0]).toEqual([{ sort: 0, from: 0, to: 120 }, { sort: 2, from: 120, to: 150 }]);
  });

  it('has what came back on the other side of nothing', () => {
    expect(pieces[1]).toEqual([{ sort: 0, from: 0, to: 80 }, { sort: 1, from: -20, to: 0 }, { sort: 2, from: 80, to: 90 }]);
    const scale = barScale(pieces, 10, 180);
    expect([scale(-20), scale(150)]).toEqual([10, 180]);
  });

  it('has a scale even where nothing was spent', () => {
    expect(barScale([], 0, 100)(0)).toBe(0);
  });
});
