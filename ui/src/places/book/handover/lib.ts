// Handing over: how a browser comes by the file, and what the comparison with an old card says.

import { fetchesFiles } from '../../../door';
import type { CardVisit, CompareView, DatedReading, DifferenceView, MomentView, PackedView } from '../../../door/types';
import { datedReading, day, itemNames, number, reading } from '../../../format';
import { say, sayKey } from '../../../words';

/** Whether the file still has to be fetched from an address. */
export function fetchable({ path }: PackedView): boolean {
  return fetchesFiles && path !== '';
}

/** Has the browser save a file that was just written, as a click on its link does. */
export function fetchFile(file: PackedView): void {
  if (!fetchable(file)) return;
  const link = document.createElement('a');
  link.href = file.path;
  link.download = '';
  link.click();
}

/** What the comparison of an old card with the book came to, sentence by sentence. */
export function comparedText(compared: CompareView): string[] {
  const key = say(compared.old.key_known ? 'compare-key-known' : 'compare-key-unknown', { fingerprint: compared.old.fingerprint });
  return [
    ...(compared.moment ? [momentText(compared.moment), ...lateText(compared.moment)] : []),
    key,
    ...(compared.car_known ? [] : [say('compare-car-unknown')]),
  ];
}

function momentText({ state, entries, newest, since }: MomentView): string {
  const values = { entries: number(entries), newest: newest === '' ? '' : day(newest), since };
  return sayKey(`compare-moment-${state}`, values) ?? state;
}

function lateText({ late }: MomentView): string[] {
  return late > 0 ? [say('compare-late', { late })] : [];
}

/** One thing that differs, in a sentence. */
export function differenceText(difference: DifferenceView): string {
  const values = {
    was: readingText(difference.reading_then) || dayOr(difference.was),
    is: readingText(difference.reading_now) || dayOr(difference.is),
    day: difference.day === '' ? '' : day(difference.day),
  };
  return sayKey(`compare-difference-${difference.kind}`, values) ?? difference.kind;
}

/** A visit in one breath: day, reading, what was done. */
export function visitText(visit: CardVisit): string {
  return [day(visit.day), reading(visit.reading), itemNames(visit.items)].join('\u00a0· ');
}

function readingText(read: DatedReading | null): string {
  return read === null ? '' : datedReading(read);
}

function dayOr(text: string): string {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) ? day(text) : text;
}
