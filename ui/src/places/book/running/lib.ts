// Consumption over time: which spans are shown, what stands in the table behind them, which work is marked, and what
// can be said of it.

import type { EffectView, FuelSpanView, FuelWarningView, HelpedView, ItemView, KindUseView, MarkView, UnusedSpanView } from '../../../door/types';
import { amountTaken, day, dayTime, decimal, itemNames, reading, use } from '../../../format';
import type { Point } from '../../../parts/plot/scales';
import { say, sayKey } from '../../../words';

/** How far back, in years. */
export const PERIODS = ['1', '3', 'all'] as const;
export type Period = (typeof PERIODS)[number];

/** A visit with its number in the plot, and what can be said of it. */
export interface NumberedMark {
  number: number;
  helped: HelpedView;
}

/** So many names of work stand on one line. */
const MOST_NAMES = 3;

/** The first day of a period that ends today; a day before every other for all of it. */
export function startOf(period: string, today: string): string {
  if (period === 'all') return '0000-00-00';
  const [year = '', rest = ''] = [today.slice(0, 4), today.slice(4)];
  return String(Number(year) - Number(period)).padStart(4, '0') + rest;
}

/** The spans that end in the period. */
export function spansSince<T extends { to: string }>(spans: T[], from: string): T[] {
  return spans.filter(({ to }) => to >= from);
}

/** Spans without a gap between them: where one was left out, the line is broken. */
export function stretchesOf(spans: FuelSpanView[]): FuelSpanView[][] {
  return spans.reduce<FuelSpanView[][]>((done, span) => {
    const last = done.at(-1);
    if (last?.at(-1)?.to !== span.from) return [...done, [span]];
    last.push(span);
    return done;
  }, []);
}

/** A value for each full tank, held from the one before; the first is there at both ends of its span. */
export function pointsOf(stretch: FuelSpanView[]): Point[] {
  const [first] = stretch;
  const start = first ? [{ time: dayTime(first.from), value: valueOf(first) }] : [];
  return [...start, ...stretch.map((span) => ({ time: dayTime(span.to), value: valueOf(span) }))];
}

export function valueOf({ used }: Pick<FuelSpanView, 'used'>): number {
  return used.hundredths / 100;
}

/** The mean of each year as a level from its first day to its last, within two moments. */
export function yearLevels({ years }: KindUseView, [from, to]: [number, number]): { from: number; to: number; value: number }[] {
  return years
    .map(({ year, used }) => ({ from: Math.max(from, Date.UTC(year, 0, 1)), to: Math.min(to, Date.UTC(year + 1, 0, 1)), value: used.hundredths / 100 }))
    .filter((level) => level.from < level.to);
}

/** The work of a period of which something can be said, oldest first and numbered from 1. */
export function numbered(helped: HelpedView[], from: string): NumberedMark[] {
  const within = helped.filter(({ day: on }) => on >= from).toSorted((a, b) => a.day.localeCompare(b.day));
  return within.map((one, index) => ({ number: index + 1, helped: one }));
}

/** The other visits of a period, of which nothing can be said. */
export function otherMarks(marks: MarkView[], helped: HelpedView[], from: string): MarkView[] {
  const told = new Set(helped.map(({ subject }) => subject));
  return marks.filter((mark) => mark.day >= from && !told.has(mark.subject));
}

/** What was done, on one line: of a long list the first two. */
export function workText(items: ItemView[]): string {
  if (items.length <= MOST_NAMES) return itemNames(items);
  return say('and-more', { name: itemNames(items.slice(0, MOST_NAMES - 1)), count: items.length - MOST_NAMES + 1 });
}

/** What it is asked of whether it helped: the work of a visit, or the codes that were cleared. */
export function askedText({ items, cleared }: HelpedView): string {
  return cleared === null ? workText(items) : say('helped-cleared', { codes: cleared.join(', '), count: cleared.length });
}

/** The spans as rows of a table, newest first. */
export function spanRows(spans: FuelSpanView[], unit: string): string[][] {
  return spans.toReversed().map((span) => [day(span.to), use(span.used, unit), reading(span.distance), amountTaken(span.amount), reading(span.reading)]);
}

export function unusedText({ from, to, why }: UnusedSpanView): string {
  return `${say('unused-between', { from: day(from), to: day(to) })}: ${sayKey(`apart-${why}`) ?? why}`;
}

/** Whether it helped, in one sentence. */
export function helpedText({ verdict }: HelpedView, kind: string): string {
  switch (verdict.verdict) {
    case 'better':
      return say('helped-better', { low: decimal(verdict.low), high: decimal(verdict.high) });
    case 'worse':
      return say('helped-worse', { low: decimal(verdict.low), high: decimal(verdict.high) });
    case 'no-larger-than':
      return say('helped-no-larger-than', { percent: decimal(verdict.percent) });
    case 'cannot-tell-yet':
      return verdict.more === null ? say('helped-cannot-tell') : say('helped-cannot-tell-yet', { more: verdict.more, kind });
  }
}

/** Whether a sentence was found, better or worse. */
export function isFound({ verdict }: HelpedView): boolean {
  return verdict.verdict === 'better' || verdict.verdict === 'worse';
}

/** What was compared; nothing where there was nothing to compare. */
export function comparedText({ before, after, change, season_may_be: season }: HelpedView): string {
  if (change === null) return '';
  if (season === null) return say('helped-compared', { before, after });
  return say('helped-compared-season', { before, after, season: decimal(season) });
}

export function effectText({ how, percent, to }: EffectView): string {
  const way = (percent ?? 0) < 0 ? 'less' : 'more';
  return say('effect-change', { how, percent: Math.abs(percent ?? 0), to: Math.abs(to ?? 0), way });
}

export function warningOf(warning: FuelWarningView): string {
  if (warning.warning !== 'larger-than-ever') return say(`odd-${warning.warning}`, { day: day(warning.day) });
  const { day: on, amount, before } = warning;
  return say('odd-larger-than-ever', { day: day(on), amount: amountTaken(amount), before: amountTaken(before) });
}

/** The plot in a sentence; nothing without a span. */
export function useSentence(spans: FuelSpanView[], unit: string): string {
  const sorted = spans.toSorted((a, b) => a.used.hundredths - b.used.hundredths);
  const [first, last, least, most] = [spans[0], spans.at(-1), sorted[0], sorted.at(-1)];
  if (!first || !last || !least || !most) return '';
  const words = { from: day(first.from), to: day(last.to), count: spans.length };
  return say('use-says', { ...words, least: use(least.used, unit), most: use(most.used, unit) });
}
