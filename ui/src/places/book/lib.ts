// The book: what a line says in one breath, how it is filtered, and how a reading is taken back into a form.

import type { BookLine, FoundView, FuelView, ItemView, LineContent, LineFilter, MeasuredValueView, PartNoteForm, ReadingForm, TroubleForm } from '../../door/types';
import { amountTaken, day, foundText, itemName, itemNames, measuredValue, money, numbersText, partTitle, reading, warningText } from '../../format';
import { interval, isMonthly } from '../../intervals';
import { list, say, sayKey } from '../../words';
import { fuelOf } from '../pump/fuel';

/** The filter as the fields hold it: text, empty where nothing is asked for. */
export interface FilterFields {
  year: string;
  item: string;
  text: string;
}

export const NO_FILTER: FilterFields = { year: '', item: '', text: '' };

export function lineFilter({ year, item, text }: FilterFields): LineFilter {
  return {
    ...(year === '' ? {} : { year: Number(year) }),
    ...(item === '' ? {} : { item: Number(item) }),
    ...(text.trim() === '' ? {} : { text: text.trim() }),
  };
}

/** The items that can be filtered by: those of the catalogue, by name. */
export function itemOptions(items: ItemView[]): { value: string; label: string }[] {
  return items
    .flatMap((item) => (item.of === 'catalogue' ? [{ value: String(item.number), label: itemName(item) }] : []))
    .sort((a, b) => a.label.localeCompare(b.label));
}

/** What a line says, on one line; `unit` is the one that the car counts. */
export function saysText(says: LineContent, unit: string): string {
  switch (says.kind) {
    case 'vehicle':
      return say('line-vehicle', { name: says.vehicle.name });
    case 'reading':
      return says.fuel ? fillText(says.fuel) : say('line-reading');
    case 'instrument':
      return say('line-instrument', { old: reading(says.old), new: reading(says.new) });
    case 'visit':
      return says.items.length > 0 ? itemNames(says.items) : foundNames(says.found);
    case 'bought':
      return say('line-bought', { what: says.parts.map(partTitle).join('\u00a0· ') });
    case 'part-note':
      return noteText(says.note);
    case 'trouble':
      return troubleLine(says.trouble);
    case 'paper':
      return say('line-paper');
    case 'measured':
      return say('line-measured', { what: says.values.map(measuredText).join('\u00a0· ') });
    case 'handover':
      return say('line-handover');
    case 'plan':
      return planText(says, unit);
    case 'newer':
      return say('line-newer');
  }
}

/** What it cost, where the line knows. */
export function costText(says: LineContent): string {
  if ((says.kind === 'visit' || says.kind === 'bought') && says.cost) return money(says.cost);
  return says.kind === 'reading' && says.fuel?.total ? money(says.fuel.total) : '';
}

export function papersIn(says: LineContent): number {
  if (says.kind === 'visit' || says.kind === 'reading' || says.kind === 'bought') return says.papers.length;
  return says.kind === 'paper' ? 1 : 0;
}

/** The reading of a line as a form takes it back; nothing when the line is no reading. */
export function readingOf({ day: on, reading: read, says }: BookLine): ReadingForm | undefined {
  if (says.kind !== 'reading') return undefined;
  const papers = says.papers.map(({ subject }) => subject);
  const form: ReadingForm = { day: on, reading: read === null ? '' : String(read.count), status: says.status, papers };
  return says.fuel ? { ...form, fuel: fuelOf(says.fuel) } : form;
}

/** Why a line no longer counts, in words; nothing where it does. */
export function struckText({ says, struck: why }: BookLine): string {
  if (why === null) return '';
  if (says.kind === 'handover') return why ? say('line-taken-back-why', { why }) : say('line-taken-back');
  if (says.kind === 'paper') return why ? say('line-thrown-away-why', { why }) : say('line-thrown-away');
  return why ? say('line-struck-why', { why }) : say('line-struck');
}

/** Whether it can be asked of a line whether consumption changed: of a visit, and of codes that were cleared. */
export function mayHaveHelped({ says, struck }: BookLine): boolean {
  if (struck !== null) return false;
  return says.kind === 'visit' || (says.kind === 'trouble' && says.trouble.scans.some(({ cleared }) => cleared));
}

/** Readings, visits and purchases can be put right; a paper is thrown away, a handover taken back, and the car itself stays. */
export function canAmend({ says, struck }: BookLine): boolean {
  return struck === null && (says.kind === 'reading' || says.kind === 'visit' || says.kind === 'bought');
}

export function canStrike({ says, struck }: BookLine): boolean {
  return struck === null && says.kind !== 'vehicle' && says.kind !== 'newer' && says.kind !== 'paper' && says.kind !== 'handover';
}

export function canThrowAway({ says, struck }: BookLine): boolean {
  return struck === null && says.kind === 'paper';
}

/** A value that was read off: what, how much, and whether it is outside of what is usual. */
export function measuredText({ parameter, value, unit, judgement }: MeasuredValueView): string {
  const what = sayKey(`parameter-${parameter}`) ?? parameter;
  const told = say('measured-is', { what, value: measuredValue(value, unit) });
  return judgement === 'usual' ? told : `${told} (${sayKey(`judgement-${judgement}`) ?? judgement})`;
}

function fillText({ amount, unit, fill }: FuelView): string {
  return say('line-fuel', { volume: amountTaken({ number: amount, unit }), fill: sayKey(`fill-${fill}`) ?? '' });
}

/** What was noted of a part: what warns of it, and its other numbers. */
function noteText({ maker, number, same, mark, instead }: PartNoteForm): string {
  const told = [warningText(mark === '' ? null : { mark, instead }), numbersText(same)].filter(Boolean);
  const part = [maker, number].filter(Boolean).join(' ');
  return told.length === 0 ? say('line-part-note', { part }) : say('line-part-noted', { part, what: told.join('; ') });
}

/** A trouble in one breath: the owner's words, else what was ticked, else what a scanner said. */
function troubleLine({ words, symptoms, scans, end }: TroubleForm): string {
  const ticked = list(symptoms.map((key) => sayKey(`symptom-${key}`) ?? key));
  const [first = ''] = (words.trim() || ticked || (scans[0]?.text ?? '')).split('\n');
  return say(end ? 'line-trouble-ended' : 'line-trouble', { words: first });
}

/** What was found on each item, on one line. */
function foundNames(found: FoundView[]): string {
  return found.map((one) => foundLine(one)).join(' · ');
}

/** What was found on one item. */
export function foundLine(found: FoundView): string {
  return `${itemName(found.item)}: ${foundText(found)}`;
}

function planText(says: Extract<LineContent, { kind: 'plan' }>, unit: string): string {
  const item = itemName(says.item);
  if (says.to === 'day' && says.day !== null) return say('line-plan-day', { item, day: day(says.day) });
  if (says.to === 'any-day') return say('line-plan-any-day', { item });
  if (says.to === 'off') return say('line-plan-off', { item });
  if (says.to === 'handbook' && says.then) {
    return say('line-plan-handbook', { item, interval: interval(says.then, unit), monthly: isMonthly(says.then) ? 'yes' : 'no' });
  }
  return say('line-plan-catalogue', { item });
}
