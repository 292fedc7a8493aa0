// The sheet: what a plan line says, and the form in which a handbook's interval is taken.

import { ask } from '../../door';
import type { FittedLine, IntervalForm, IntervalView, ItemForm, MissingLine, PlanForm, PlanLine } from '../../door/types';
import { day, hasWords, itemName } from '../../format';
import { interval, isMonthly } from '../../intervals';
import { emptyVisit } from '../../parts/visit/lib';
import { either, say, sayKey } from '../../words';
import { conditionsText, sourceText } from '../today/due';

export interface HandbookForm {
  then: IntervalForm;
  first: IntervalForm;
  /** The first interval differs. */
  differs: boolean;
  /** What leaving an item of the owner's own undone can cost; empty of an item of the catalogue, which says it itself. */
  stakes: string;
}

/** Starts from the interval that holds now, so that only what differs has to be typed. */
export function handbookForm(unit: string, line?: PlanLine): HandbookForm {
  return {
    then: intervalForm(unit, line?.interval ?? undefined),
    first: intervalForm(unit, line?.first ?? undefined),
    differs: line?.first != null,
    stakes: line?.item.of === 'own' ? line.stakes : '',
  };
}

export function planChange({ then, first, differs, stakes }: HandbookForm): PlanForm {
  return { to: 'handbook', then, ...(differs ? { first } : {}), ...(stakes === '' ? {} : { stakes }) };
}

/** Changes the plan, and writes down when it was last done where the owner tells the day. */
export async function setPlan(book: string, item: ItemForm, change: PlanForm, last = ''): Promise<void> {
  await ask({ ask: 'change-plan', book, item, change });
  if (last === '') return;
  await ask({ ask: 'record-visit', book, visit: { ...emptyVisit('', last), items: [item] }, keep: false });
}

/** The interval that holds, whose it is, and what tightened it; `unit` is the one that the car counts. */
export function planText(line: PlanLine, unit: string): string {
  if (line.off) return say('plan-off');
  if (line.interval === null) return say('plan-unset');
  const texts = [firstText(line, unit), everyText(line, line.interval, unit), tightenedText(line), alongText(line), stakesText(line)];
  return texts.filter((text) => text !== '').join(' ');
}

/** Who had switched it off before the book was handed over; empty where nobody had. */
export function leftOffText({ left_off: left }: PlanLine): string {
  return left === null ? '' : say('plan-left', { day: day(left.day), by: left.by, handed: day(left.handed_over) });
}

/** Why a car does not need an item. */
export function missingText({ lacks }: MissingLine): string {
  return lacks.length === 0 ? say('missing-engine') : say('missing-lacks', { things: either(lacks.map(fittingName)) });
}

function everyText({ after, source, source_name }: PlanLine, every: IntervalView, unit: string): string {
  const words = { interval: interval(every, unit), source: sourceText(source, source_name) };
  if (after.length > 0) return say('plan-after', { ...words, items: either(after.map(itemName)) });
  return say('plan-every', { ...words, monthly: isMonthly(every) ? 'yes' : 'no' });
}

function firstText({ first }: PlanLine, unit: string): string {
  return first === null ? '' : say('plan-first', { interval: interval(first, unit) });
}

function tightenedText({ tightened_by }: PlanLine): string {
  return tightened_by.length > 0 ? say('plan-tightened', { conditions: conditionsText(tightened_by) }) : '';
}

function alongText({ goes_with }: PlanLine): string {
  return goes_with === null ? '' : say('plan-goes-with', { item: itemName(goes_with) });
}

function stakesText({ item, stakes }: PlanLine): string {
  return item.of === 'own' ? say('plan-stakes-says', { stakes: sayKey(`stakes-${stakes}`) ?? stakes }) : '';
}

/** The plan as the sheet lays it out, each part by name. */
export interface PlanParts {
  /** What waits for an interval that only the owner can give. */
  unset: PlanLine[];
  /** What an earlier owner had switched off, and nobody has settled since. */
  left: PlanLine[];
  on: PlanLine[];
  off: PlanLine[];
}

/** Sorts the plan, and keeps of it what has the words in its name. */
export function planParts(plan: PlanLine[], words: string): PlanParts {
  const lines = named(plan, words);
  const counted = lines.filter(({ off, left_off: left }) => !off && left === null);
  return {
    unset: counted.filter(({ interval: every }) => every === null),
    left: lines.filter(({ left_off: left }) => left !== null),
    on: counted.filter(({ interval: every }) => every !== null),
    off: lines.filter(({ off }) => off),
  };
}

/** Those that have the words in their names, by name. */
export function named<T extends { item: PlanLine['item'] }>(lines: T[], words: string): T[] {
  return lines.filter(({ item }) => hasWords(itemName(item), words)).sort((a, b) => itemName(a.item).localeCompare(itemName(b.item)));
}

/** What the car has, lacks and may have, by name. */
export function fittedParts(fitted: FittedLine[]): { has: string[]; lacks: string[]; unknown: string[] } {
  const named = (has: boolean | null) => fitted.filter((line) => line.has === has).map(({ key }) => fittingName(key));
  return { has: named(true), lacks: named(false), unknown: named(null) };
}

export function fittingName(key: string): string {
  return sayKey(`fitted-${key}`) ?? key;
}

function intervalForm(unit: string, view?: IntervalView): IntervalForm {
  const { distance, months } = view ?? { distance: null, months: null };
  return { distance: distance === null ? '' : String(distance.count), unit: distance?.unit ?? unit, months: months ?? '' };
}
