// What was read on a paper, as rows that the owner looks at beside the photo, corrects and takes over. Nothing of it
// is believed before he has gone on from here, and nothing written before he has seen the form.

import type { CheckedView, FuelReadView, PaperView, PartForm, ReceiptLineView, ReceiptView, WarnedView, WarningView } from '../../../door/types';
import { money } from '../../../format';
import type { FromPaper } from '../../../parts/from-paper';
import { emptyPart } from '../../../parts/visit/lib';
import { say } from '../../../words';

/** Left, top, width and height in shares of the photo. */
export type Area = FuelReadView['area'];

/** Where something stands on the photo, and how sure it is. */
export interface Seen {
  sure: string;
  area: Area;
}

/** A single value. */
export interface Row extends Seen {
  value: string;
}

/** A figure of a fill; one that was not found stands nowhere. */
export interface Figure {
  value: string;
  seen: Seen | null;
}

/** A value that need not be taken over. */
export interface Choosable extends Seen {
  taken: boolean;
}

export interface ReceiptDraft {
  shop: Row | null;
  /** `choices` has two days where day and month can change places; the value is empty until one is chosen. */
  day: (Row & { choices: string[] }) | null;
  currency: string;
  total: Row | null;
  tax: (Choosable & { value: string })[];
  parts: (Choosable & { part: PartForm })[];
  fuel: { volume: Figure; unit: string; price: Figure; total: Figure } | null;
  odometer: (Row & { unit: string }) | null;
}

/** What was read, ready to be corrected. What is a guess is taken over only when the owner ticks it. */
export function draftOf({ fields }: ReceiptView): ReceiptDraft {
  const { shop, day, currency, total, tax, lines, numbers, fuel, odometer } = fields;
  const told = new Set(lines.map(({ number }) => bare(number?.value ?? '')));
  const alone = numbers.filter(({ value }) => !told.has(bare(value)));
  return {
    shop: shop && { ...shop },
    day: day && { ...day, value: day.or === null ? day.value : '', choices: day.or === null ? [] : [day.value, day.or].sort() },
    currency: currency?.value ?? total?.currency ?? tax[0]?.currency ?? '',
    total: total && { ...total },
    tax: tax.map((one) => ({ ...one, taken: false })),
    parts: [
      ...lines.map((line) => ({ sure: leastOf(line), area: line.area, taken: fuel === null && line.sure !== 'doubtful', part: partOf(line) })),
      ...alone.map(({ value, sure, area }) => ({ sure, area, taken: sure !== 'doubtful', part: { ...emptyPart(), number: value } })),
    ],
    fuel: fuel && fillOf(fuel),
    odometer: odometer && { ...odometer, value: String(odometer.value) },
  };
}

/** Whether the owner has yet to say which of two days it was. */
export function asksDay({ day }: ReceiptDraft): boolean {
  return day !== null && day.choices.length > 0 && day.value === '';
}

/** What the owner takes over; a reading in another unit than the car counts is of another car. */
export function takenOver(draft: ReceiptDraft, paper: string, unit: string): FromPaper {
  const { fuel, odometer } = draft;
  const taxes = draft.tax.filter(({ taken }) => taken);
  return {
    paper,
    day: draft.day?.value ?? '',
    shop: draft.shop?.value.trim() ?? '',
    cost: draft.total?.value ?? fuel?.total.value ?? '',
    currency: draft.currency.trim(),
    parts: draft.parts.flatMap(({ taken, part }) => (taken ? [{ ...part }] : [])),
    note: taxes.map(({ value }) => say('read-tax-note', { amount: [value, draft.currency].filter(Boolean).join(' ') })).join('\n'),
    volume: fuel?.volume.value ?? '',
    volumeUnit: fuel?.volume.value ? fuel.unit : '',
    price: fuel?.price.value ?? '',
    reading: odometer?.unit === unit ? odometer.value.replace(/\D/g, '') : '',
  };
}

/** What warns of a number as it stands there now, which the owner may have corrected. */
export function warningOf(number: string, warned: WarnedView[]): WarningView | undefined {
  return warned.find((one) => bare(one.number) === bare(number))?.warning;
}

/** The sums that do not agree, each in a sentence with both figures. */
export function disagreements(checks: CheckedView[]): string[] {
  const wrong = checks.filter(({ agrees }) => !agrees);
  return wrong.map(({ kind, worked_out, printed }) => say('read-check', { kind, worked: money(worked_out), printed: money(printed) }));
}

/** A share of the photo's height that is shown above and below what was read, and of its width beside it. */
const MARGIN = { beside: 0.015, above: 0.6 };
/** No lower than this share, so that a thin line still shows what is around it. */
const LEAST = 0.012;

/** The window onto the photo in which an area stands with some paper around it, in shares of the photo. */
export function windowOn([left, top, width, height]: Area): { left: number; top: number; width: number; height: number } {
  const above = Math.max(height * MARGIN.above, LEAST);
  const from = { x: within(left - MARGIN.beside), y: within(top - above) };
  const to = { x: within(left + width + MARGIN.beside), y: within(top + height + above) };
  return { left: from.x, top: from.y, width: Math.max(to.x - from.x, LEAST), height: Math.max(to.y - from.y, LEAST) };
}

/** How wide a window may be drawn so that no dot of the photo is larger than one of the page, in pixels. */
export function sharpest({ width }: { width: number }, paper: Pick<PaperView, 'width'>): number {
  return Math.round(width * paper.width);
}

function fillOf({ volume, unit, price, total, figures }: FuelReadView): NonNullable<ReceiptDraft['fuel']> {
  return {
    volume: { value: volume, seen: figures.volume },
    unit: unit || 'litre',
    price: { value: price, seen: figures.price },
    total: { value: total, seen: figures.total },
  };
}

function partOf({ text, number, quantity, measure, price }: ReceiptLineView): PartForm {
  return { ...emptyPart(), name: text, number: number?.value ?? '', quantity, measure: measure || 'piece', price };
}

/** From a guess to what is borne out. */
const LEVELS = ['doubtful', 'likely', 'sure'];

/** A line is said to be as sure as the less sure of its price and its number, because both are taken over together. */
function leastOf({ sure, number }: ReceiptLineView): string {
  const told = number === null ? [sure] : [sure, number.sure];
  return LEVELS.find((level) => told.includes(level)) ?? sure;
}

/** A number as numbers are compared: without spaces, dots, dashes and case. */
function bare(number: string): string {
  return number.replace(/[\s.\-/]/g, '').toLowerCase();
}

function within(share: number): number {
  return Math.min(1, Math.max(0, share));
}
