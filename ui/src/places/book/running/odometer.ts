// The odometer over time: what was read, and where its pace leads, with its span.

import type { OdometerPoint, OdometerView } from '../../../door/types';
import { day, dayTime, number, reading } from '../../../format';
import type { Between, Point } from '../../../parts/plot/scales';
import { say } from '../../../words';

/** Everything that the plot draws, on the distance that the car has gone. */
export interface OdometerPlan {
  read: Point[];
  doubtful: Point[];
  likely: Point[];
  span: Between[];
}

/** What is drawn since a day; the pace starts at the last reading that counts. */
export function planOf({ points, ahead }: OdometerView, from: string): OdometerPlan {
  const shown = points.filter((point) => point.day >= from);
  const counting = shown.filter(({ doubtful }) => !doubtful).map(pointOf);
  const last = counting.at(-1);
  const start = last && ahead.length > 0 ? [last] : [];
  const further = ahead.filter((one) => last === undefined || dayTime(one.day) > last.time);
  return {
    read: counting,
    doubtful: shown.filter(({ doubtful }) => doubtful).map(pointOf),
    likely: [...start, ...further.map((one) => ({ time: dayTime(one.day), value: one.likely.count }))],
    span: [
      ...start.map(({ time, value }) => ({ time, low: value, high: value })),
      ...further.map((one) => ({ time: dayTime(one.day), low: one.low.count, high: one.high.count })),
    ],
  };
}

/** Whether an instrument was replaced, so that the plot counts on where the instrument does not. */
export function wasReplaced({ points }: OdometerView): boolean {
  return points.some(({ shown, travelled }) => shown.count !== travelled.count);
}

/** What is likely and what was read as rows of a table, newest first. */
export function odometerRows({ points, ahead }: OdometerView, from: string): string[][] {
  const likely = ahead.map((one) => [day(one.day), '', reading(one.likely), `${number(one.low.count)}–${number(one.high.count)}`]);
  const read = points.filter((point) => point.day >= from).map((point) => [day(point.day), shownText(point), '', '']);
  return [...read, ...likely].toReversed();
}

/** The plot in a sentence; nothing without a reading. */
export function odometerSentence({ points }: OdometerView, from: string): string {
  const shown = points.filter((point) => point.day >= from);
  const [first, last] = [shown[0], shown.at(-1)];
  if (!first || !last) return '';
  return say('odometer-says', { from: day(first.day), first: reading(first.shown), to: day(last.day), last: reading(last.shown) });
}

function shownText({ shown, doubtful }: OdometerPoint): string {
  return doubtful ? `${reading(shown)} (${say('odometer-key-doubtful')})` : reading(shown);
}

function pointOf({ day: on, travelled }: OdometerPoint): Point {
  return { time: dayTime(on), value: travelled.count };
}
