// The number pad: what a tap does to the digits, how they are shown, and what is kept while the phone is pocketed.

import type { FuelForm, LastUseView, PumpView, ReadingForm, ReadingLine } from '../../door/types';
import type { FromPaper } from '../../parts/from-paper';
import { emptyFuel, fuelOfPaper, hasFuel, keptFuel, offerOf } from './fuel';

/** No odometer shows more digits, and no core takes more. */
export const MOST_DIGITS = 7;

/** What is on the pad and beside it. */
export interface PumpDraft {
  digits: string;
  /** The fuel section is open. */
  fuelled: boolean;
  fuel: FuelForm;
  /** The day; today when empty. */
  day: string;
  /** The papers that belong to it. */
  papers: string[];
}

/** How a half-typed reading stands on the page: digits given, digits typed, places still empty. */
export interface Shown {
  given: string;
  typed: string;
  empty: number;
}

export function freshDraft({ leading, fuels }: PumpView): PumpDraft {
  return { digits: leading, fuelled: false, fuel: emptyFuel(offerOf(fuels, '')), day: '', papers: [] };
}

/**
 * A fill that a paper tells of. Digits that nobody read stand there only when it is of today: those that were typed
 * before the paper was read, or else the leading ones.
 */
export function paperDraft(view: PumpView, from: FromPaper, old?: PumpDraft): PumpDraft {
  const typed = (from.day === '' || from.day === view.today) && old ? old.digits : '';
  const digits = from.reading || typed || (from.day === view.today ? view.leading : '');
  return { digits, fuelled: true, fuel: fuelOfPaper(view.fuels, from), day: from.day, papers: [from.paper] };
}

/** The kept draft, unless the book has moved on since and the draft holds nothing that it would lose. */
export function startDraft(view: PumpView, kept: Partial<PumpDraft> | undefined): PumpDraft {
  const fresh = freshDraft(view);
  const fuel = keptFuel(fresh.fuel, kept?.fuel);
  const { digits = '', fuelled = false, day = '', papers = [] } = kept ?? {};
  const worth = digits.length > view.leading.length || hasFuel(fuel) || papers.length > 0;
  return worth ? { digits, fuelled, fuel, day, papers } : fresh;
}

/** Whether nobody has added a digit to those that stood there. */
export function isUntouched({ digits }: PumpDraft, { leading }: PumpView): boolean {
  return leading.startsWith(digits);
}

/** Whether there is something to lose. */
export function worthKeeping(draft: PumpDraft, { leading }: PumpView): boolean {
  return draft.digits !== leading || hasFuel(draft.fuel) || draft.papers.length > 0;
}

export function tap(digits: string, digit: string): string {
  return digits.length >= MOST_DIGITS ? digits : digits + digit;
}

export function erase(digits: string): string {
  return digits.slice(0, -1);
}

/** Only the digits of what was typed or pasted: '98 420 km' is 98420. */
export function digitsOf(text: string): string {
  return text.replace(/\D/g, '').slice(0, MOST_DIGITS);
}

/** Whether something other than a reading was typed or pasted: more than digits, their groups and the unit. */
export function isStray(text: string): boolean {
  const bare = text.trim().replace(/\s*(km|mi)$/i, '');
  return !/^(\d*|\d{1,3}([\s.,'’]\d{3})+)$/.test(bare);
}

/** What a key of the keyboard means, wherever on the page it was struck. */
export type Stroke = 'digit' | 'erase' | 'save';

/** Where the focus is: on a field that takes letters itself, on a key that Enter presses, or elsewhere. */
export type Focus = 'field' | 'key' | 'page';

/** Digits go to the pad unless a field takes them; Enter saves unless it presses the key that has the focus. */
export function strokeOf(key: string, focus: Focus): Stroke | undefined {
  if (focus === 'field') return undefined;
  if (/^\d$/.test(key)) return 'digit';
  if (key === 'Backspace') return 'erase';
  return key === 'Enter' && focus === 'page' ? 'save' : undefined;
}

/** The full tank that a fill ended; nothing where it ended none. */
export function endedBy({ day, fuel }: ReadingLine, used: LastUseView[]): LastUseView | undefined {
  return fuel?.fill === 'full' ? used.find(({ kind, to }) => kind === fuel.kind && to === day) : undefined;
}

/** Splits the digits into what stood there already, what was typed, and the places that are still empty. */
export function shown(digits: string, leading: string, expected: number): Shown {
  const given = digits.startsWith(leading) ? leading : commonStart(digits, leading);
  return { given, typed: digits.slice(given.length), empty: Math.max(0, expected - digits.length) };
}

/** Whether a group of three begins before the place at this index of so many. */
export function groupBefore(index: number, places: number): boolean {
  return index > 0 && (places - index) % 3 === 0;
}

/** What goes to the door: as the instrument shows it, with fuel when the section is open. */
export function readingForm({ digits, fuelled, fuel, day, papers }: PumpDraft): ReadingForm {
  const form: ReadingForm = { day, reading: digits, status: '', papers: [...papers] };
  return fuelled && hasFuel(fuel) ? { ...form, fuel } : form;
}

function commonStart(a: string, b: string): string {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length += 1;
  return a.slice(0, length);
}
