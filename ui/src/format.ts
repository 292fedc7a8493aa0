// Dates, readings, money and parts as they stand on the page. What they say in words comes from Fluent.

import type { AmountTakenView, DatedReading, FoundView, FuelView, ItemView, MoneyView, NumberForm, PartView, Reading, UnitKey, UseView, WarningView } from './door/types';
import { list, locale, say, sayKey } from './words';

/** Groups of three stand apart by a space at which no line breaks, in every language. */
const NBSP = '\u00a0';
const DAY_MS = 86_400_000;
/** Further away than this, a day is told in months. */
const MOST_DAYS = 60;
const MONTH_DAYS = 30.44;

const whole = new Intl.NumberFormat(locale, { useGrouping: 'always', maximumFractionDigits: 0 } as Intl.NumberFormatOptions);
const dayFormat = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
const longFormat = new Intl.DateTimeFormat(locale, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
const weekdayFormat = new Intl.DateTimeFormat(locale, { weekday: 'short', day: 'numeric', month: 'long', timeZone: 'UTC' });
const weekdayYearFormat = new Intl.DateTimeFormat(locale, { weekday: 'short', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
const relative = new Intl.RelativeTimeFormat(locale, { numeric: 'auto' });
const monthFormat = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });

/** A whole number, grouped. */
export function number(value: number): string {
  return spaced(whole.formatToParts(value));
}

/** How much room bytes take: `412 kB`, `3.4 MB`. */
export function room(bytes: number): string {
  const [size, unit] = bytes < 1_000_000 ? [bytes / 1_000, 'kilobyte'] : [bytes / 1_000_000, 'megabyte'];
  const format = new Intl.NumberFormat(locale, { style: 'unit', unit, maximumFractionDigits: unit === 'kilobyte' ? 0 : 1 });
  return spaced(format.formatToParts(size));
}

/** A number that came as text with a point, with as many decimals as it came with. */
export function decimal(text: string): string {
  const decimals = text.split('.')[1]?.length ?? 0;
  const format = new Intl.NumberFormat(locale, { useGrouping: true, minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  return spaced(format.formatToParts(Number(text)));
}

/** `YYYY-MM-DD` as a moment in UTC, so that no clock shift moves the day. */
export function dayTime(day: string): number {
  return Date.parse(`${day}T00:00:00Z`);
}

/** Whole days from one day to another. */
export function daysBetween(from: string, to: string): number {
  return Math.round((dayTime(to) - dayTime(from)) / DAY_MS);
}

/** `25 Nov 2026`. */
export function day(text: string): string {
  const time = dayTime(text);
  return Number.isNaN(time) ? text : dayFormat.format(time).replaceAll(' ', '\u00a0');
}

/** `Wednesday, 25 November 2026`. */
export function longDay(text: string): string {
  const time = dayTime(text);
  return Number.isNaN(time) ? text : longFormat.format(time);
}

/** `Sat 12 December`, with the year where it is not the present one. */
export function dayWithWeekday(text: string, today: string): string {
  const format = text.slice(0, 4) === today.slice(0, 4) ? weekdayFormat : weekdayYearFormat;
  return format.format(dayTime(text)).replace(',', '');
}

/** `in 17 days`, `tomorrow`, `3 months ago`. */
export function fromNow(today: string, text: string): string {
  const days = daysBetween(today, text);
  return Math.abs(days) <= MOST_DAYS ? relative.format(days, 'day') : relative.format(Math.round(days / MONTH_DAYS), 'month');
}

/** `40 min`, `2 h 40 min`: to ten minutes, since it is an estimate. */
export function workTime(minutes: number): string {
  const [hours, rest] = [Math.floor(tens(minutes) / 60), tens(minutes) % 60];
  if (hours === 0) return say('minutes', { minutes: rest });
  return rest === 0 ? say('hours', { hours }) : say('hours-minutes', { hours, minutes: rest });
}

/** The short name of the month in which a moment lies. */
export function month(time: number): string {
  return monthFormat.format(time);
}

/** The name of a unit, such as `km`. */
export function unitName(unit: string): string {
  return say(unit === 'mi' ? 'unit-mi' : 'unit-km');
}

/** `98 420 km`. */
export function reading({ count, unit }: Reading): string {
  return distance(count, unit);
}

export function distance(count: number, unit: UnitKey | string): string {
  return `${number(count)}\u00a0${unitName(unit)}`;
}

/** `96 300 km on 12 Oct 2026`. */
export function datedReading(dated: DatedReading): string {
  return say('reading-on', { reading: reading(dated.reading), day: day(dated.day) });
}

/** `12.50 EUR`: the code and not a sign, because many countries share one sign. */
export function money({ number: amount, currency }: MoneyView): string {
  return `${decimal(amount)}\u00a0${currency}`;
}

/** What an item is called. */
export function itemName(item: ItemView): string {
  if (item.of === 'own') return item.name;
  return sayKey(`item-${item.key}`) ?? say('item-of-newer', { number: item.number });
}

/** Whether a name holds what was typed, without regard to case; anything holds nothing. */
export function hasWords(name: string, typed: string): boolean {
  return name.toLocaleLowerCase(locale).includes(typed.trim().toLocaleLowerCase(locale));
}

/** Several items on one line; many names hold a comma of their own, so that a point parts them. */
export function itemNames(items: ItemView[]): string {
  return items.map(itemName).join(`${NBSP}· `);
}

/** `3.1 mm`. */
export function measuredValue(value: string, unit: string): string {
  return `${decimal(value)}\u00a0${unit}`;
}

/** `worn`, or `within limits (Tread depth 3.1 mm)`. */
export function foundText({ finding, value }: Pick<FoundView, 'finding' | 'value'>): string {
  const words = sayKey(`finding-${finding}`) ?? finding;
  if (value === null || value.value === '') return words;
  return say('found-measured', { finding: words, what: measuredName(value.what), value: measuredValue(value.value, value.unit) });
}

/** What is measured, by name. */
export function measuredName(what: string): string {
  return sayKey(`measured-${what}`) ?? what;
}

/** `4.3 litres`, `2 pieces`. */
export function quantity({ quantity: amount, measure }: Pick<PartView, 'quantity' | 'measure'>): string {
  return sayKey(`amount-${measure}`, { amount: Number(amount) }) ?? `${decimal(amount)} ${measure}`;
}

/** `41.30 litres`: the third decimal is told only where it says something. */
export function amountTaken({ number: amount, unit }: AmountTakenView): string {
  return `${decimal(amount.replace(/(\.\d\d)0$/, '$1'))}\u00a0${sayKey(`volume-${unit}`) ?? unit}`;
}

/** `41.30 litres, 69.76 EUR, full tank`. */
export function fuelText({ amount, unit, total, fill }: FuelView): string {
  const told = [amountTaken({ number: amount, unit }), total ? money(total) : '', sayKey(`fill-${fill}`) ?? ''];
  return told.filter(Boolean).join(', ');
}

/** `6.4 L/100 km`. */
export function use({ number: value }: UseView, unit: string): string {
  return `${decimal(value)}\u00a0${sayKey(`use-${unit}`) ?? unit}`;
}

/** The maker and his number, or the name where there is no number. */
export function partTitle({ maker, number: maker_number, name }: PartView): string {
  return [maker, maker_number || name].filter(Boolean).join(' ');
}

/** 'Also as Merle M 7 and Quarrel 20118'; nothing when no other number is known. */
export function numbersText(same: NumberForm[]): string {
  const numbers = same.map(({ maker, number: given }) => [maker, given].filter(Boolean).join(' '));
  return numbers.length === 0 ? '' : say('also-as', { numbers: list(numbers) });
}

/** Why a part should not be bought again; nothing when nothing warns of it. */
export function warningText(warning: WarningView | null): string {
  if (warning === null) return '';
  return say('warning', { mark: warning.mark, ask: warning.instead === '' ? 'no' : 'yes', instead: warning.instead });
}

function tens(minutes: number): number {
  return Math.max(10, Math.round(minutes / 10) * 10);
}

function spaced(parts: Intl.NumberFormatPart[]): string {
  return parts.map(({ type, value }) => (type === 'group' ? NBSP : value)).join('');
}
