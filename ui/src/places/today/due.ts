// What a due line says: when it falls, and the one sentence that answers 'why?'.

import type { DueView, ItemView, MovedView, PlannedVisitView, SeenView, VisitItemView, WhyView } from '../../door/types';
import { day, foundText, itemName, measuredValue, money, reading } from '../../format';
import { interval, isMonthly } from '../../intervals';
import { itemAddress, sameView } from '../../parts/visit/lib';
import { list, say, sayKey } from '../../words';

/**
 * When an item falls: by its day or its reading, the one that comes first named first. `paced`: it is known how fast
 * the car goes, so that a reading which could come sooner widens the span of days.
 */
export function whenText({ state, day: date, reading: at, first, between }: DueView, paced: boolean): string {
  if (state === 'overdue') {
    if (first === 'distance' && at) return say('due-was-at', { reading: reading(at) });
    return date === null ? '' : say('due-was-on', { day: day(date) });
  }
  if (state === 'due') return first === 'distance' && at ? say('due-at', { reading: reading(at) }) : '';
  if (date === null) return at ? say('due-at', { reading: reading(at) }) : '';
  if (at && first === 'distance') return say('due-at-about', { day: day(date), reading: reading(at) });
  const comesSooner = first === 'time' && (!paced || (between !== null && between.early < date));
  return at && comesSooner ? say('due-by-or', { day: day(date), reading: reading(at) }) : say('due-by', { day: day(date) });
}

/** From when to when a thing may fall; its one day where no doubt is left. */
export function mayFallText({ day: date, between, state }: DueView): string {
  if (date === null) return '';
  if (state === 'overdue') return say('due-was-on', { day: day(date) });
  if (between === null || between.early === between.late) return day(date);
  return say('road-from-to', { first: day(between.early), last: day(between.late) });
}

/**
 * Why: which interval, whose, tightened by what, counted from what, what was found, between which days. `unit` is the
 * one that the car counts.
 */
export function whyText({ why, between }: Pick<DueView, 'why' | 'between'>, unit: string): string {
  return say('why', {
    phase: why.phase === 'every' && isMonthly(why.interval) ? 'monthly' : why.phase,
    interval: interval(why.interval, unit),
    fitted: why.kind === null ? 'no' : 'yes',
    kind: why.kind === null ? '' : (sayKey(`kind-${why.kind}`) ?? why.kind),
    source: sourceText(why.source, why.source_name),
    tightened: why.tightened_by.length > 0 ? 'yes' : 'no',
    conditions: conditionsText(why.tightened_by),
    along: why.goes_with === null ? 'no' : 'yes',
    other: why.goes_with === null ? '' : itemName(why.goes_with),
    from: countedFrom(why),
    seen: why.seen === null ? '' : seenText(why.seen),
    between: between === null || between.early === between.late ? '' : say('why-between', { early: day(between.early), late: day(between.late) }),
  });
}

/** What tightened an interval, in words. */
export function conditionsText(keys: string[]): string {
  return list(keys.map((key) => sayKey(`condition-${key}`) ?? key));
}

function seenText({ day: date, finding, value, effect, undecided }: SeenView): string {
  const seen = say('why-seen', {
    day: day(date),
    finding: foundText({ finding, value }),
    effect,
    limit: value === null ? '' : measuredValue(value.limit, value.unit),
  });
  return undecided.length === 0 ? seen : seen + say('why-undecided', { items: undecided.map(itemName).join(' / ') });
}

/** Whose interval it is. */
export function sourceText(source: string, name: string): string {
  return say('source', { source, name });
}

function countedFrom({ from }: WhyView): string {
  if (from === null) return say('from-nothing');
  if (from.from === 'other') return say('from-other', { item: itemName(from.item), day: day(from.day) });
  if (from.from === 'first-use') return say('from-first-use', { day: day(from.day) });
  if (from.reading === null) return say('from-done', { day: day(from.day) });
  return say('from-done-at', { day: day(from.day), reading: reading(from.reading) });
}

/** The plan's lines as Today lays them out: what presses in sight, the rest folded. */
export interface DueGroups {
  pressing: DueView[];
  round: DueView[];
  ahead: DueView[];
  unrecorded: DueView[];
}

/** From this weight on, ignoring an item may wreck the engine or hurt someone. */
const GRAVE = 5;
/** Of a car whose past nobody knows, so many grave questions are asked at once. */
const GRAVE_IN_SIGHT = 4;

/** What nobody recorded is ahead once the owner has chosen a day for it, as on the road. */
export function groupDue(due: DueView[], visits: PlannedVisitView[]): DueGroups {
  const round = due.filter((line) => line.round);
  const planned = due.filter((line) => !line.round);
  const unrecorded = planned.filter((line) => hasNoPlace(line, visits));
  const grave = unrecorded.filter(({ weight }) => weight >= GRAVE).slice(0, GRAVE_IN_SIGHT);
  const ahead = planned.filter((line) => line.state === 'ahead' || (line.state === 'no-record' && !unrecorded.includes(line)));
  const folded = unrecorded.filter((line) => !grave.includes(line));
  return { pressing: planned.filter((line) => !ahead.includes(line) && !folded.includes(line)), round, ahead, unrecorded: folded };
}

/** Whether nobody recorded a thing and nobody chose a day for it, so that it hangs nowhere on the road. */
export function hasNoPlace({ state, item }: DueView, visits: PlannedVisitView[]): boolean {
  return state === 'no-record' && !visits.some((visit) => isNextIn(visit, item));
}

/** Whether a visit sees to the next time of an item. */
export function isNextIn({ items }: PlannedVisitView, item: ItemView): boolean {
  return items.some((planned) => planned.next && sameView(planned.item, item));
}

/** By which a row of a visit stays the row of its item when others come or go; only the next time is one of a kind. */
export function keyOf({ item, next }: VisitItemView, index: number): string {
  return next ? itemAddress(item) : `${index} ${itemAddress(item)}`;
}

/** The day that the owner chose for the next time of an item. */
export function chosenDay(item: ItemView, visits: PlannedVisitView[]): string | undefined {
  return visits.find(({ items }) => items.some((planned) => planned.pinned && planned.next && sameView(planned.item, item)))?.day;
}

/** What it adds to have a job on another day than the plan proposes. */
export function movedText({ percent, extra, late, weight }: MovedView, due: string): string {
  const adds = addsText(percent, extra);
  if (!late) return adds;
  return `${adds} ${say(weight >= GRAVE ? 'move-late-grave' : 'move-late', { day: day(due) })}`;
}

function addsText(percent: number, extra: MovedView['extra']): string {
  if (percent <= 0) return say('move-free');
  return extra === null ? say('move-percent', { percent }) : say('move-extra', { money: money(extra) });
}
