// The counter: how large a number may stand so that it fills the screen and breaks nowhere, and what a row says.

import type { GetView, VisitLine } from '../../door/types';
import { day, itemNames, money } from '../../format';
import { say } from '../../words';

/** A letter of the typeface is at most this part of its size wide; capital W and M are rare in part numbers. */
const LETTER = 0.68;

/** The size of a number that breaks between its words, in hundredths of the width of the screen. */
export function numberSize(text: string): number {
  return fit(Math.max(...words(text).map((word) => word.length)));
}

/** The size at which the whole number stands on one line, in the same measure. */
export function lineSize(text: string): number {
  return fit(words(text).join(' ').length);
}

/** On how many lines it may stand at most. */
export function wordCount(text: string): number {
  return words(text).length;
}

function words(text: string): string[] {
  return text.trim().split(/\s+/);
}

function fit(letters: number): number {
  return Math.min(22, 88 / (Math.max(4, letters) * LETTER));
}

/** What the clerk searches by: the maker's number, or the name where no number was written down. */
export function numberOf({ part }: GetView): string {
  return part === null ? '' : part.number || part.name;
}

/** Where and when it was bought the last time, and for how much. */
export function lastText({ part, workshop, day: date }: GetView): string {
  const where = workshop === '' ? say('get-by-owner') : workshop;
  if (date === null) return '';
  if (part?.price == null) return say('get-last', { day: day(date), where });
  return say('get-last-price', { day: day(date), where, price: money(part.price) });
}

/** A visit in a list of visits. */
export function visitText({ day: date, items, workshop }: VisitLine): string {
  return [day(date), itemNames(items), workshop].filter(Boolean).join(', ');
}
