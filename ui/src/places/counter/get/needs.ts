// What stands beside a thing to get: how much is left to buy, what to ask for, how long the last one lasted, and the
// whole list as plain text for a message.

import type { GetView, PartView, UsedView } from '../../../door/types';
import { day, dayTime, money, quantity, reading, warningText } from '../../../format';
import { locale, say } from '../../../words';

const MONTH_DAYS = 30.44;
/** Longer than this, a time is told in months. */
const MOST_DAYS = 60;

const monthYear = new Intl.DateTimeFormat(locale, { month: 'short', year: 'numeric', timeZone: 'UTC' });

/** Whether what is at home suffices, so that nothing has to be bought. */
export function isAtHome({ at_home, to_buy }: GetView): boolean {
  return at_home !== '' && to_buy === '';
}

/** What the clerk searches by: the number to ask for, or the name where no number was written down. */
export function numberOf({ part, warning }: GetView): string {
  return part === null ? '' : warning?.instead || part.number || part.name;
}

/** Whether that is another number than the one that was fitted. */
export function isInstead({ part, warning }: GetView): boolean {
  return part !== null && (warning?.instead ?? '') !== '' && part.number !== '';
}

/** How much of it there is still to buy, in its measure. */
export function amountToBuy({ part, to_buy }: GetView): string {
  return part === null ? '' : quantity({ ...part, quantity: to_buy || part.quantity });
}

/** 'At home: 1 piece'; nothing when there is none. */
export function atHomeText({ part, at_home }: GetView): string {
  return part === null || at_home === '' ? '' : say('get-at-home', { amount: quantity({ ...part, quantity: at_home }) });
}

/** Where and when it was bought the last time, and for how much. */
export function lastText({ part, workshop, day: date }: GetView): string {
  const where = workshop === '' ? say('get-by-owner') : workshop;
  if (date === null) return '';
  if (part?.price == null) return say('get-last', { day: day(date), where });
  return say('get-last-price', { day: day(date), where, price: money(part.price) });
}

/** 'The last one lasted 14 months and 21 300 km', 'In since Oct 2024': as much of it as the book tells. */
export function usedTexts({ lasted, part, day: date }: GetView): string[] {
  const since = part !== null && date !== null ? [say('get-since', { month: monthYear.format(dayTime(date)) })] : [];
  return lasted === null ? since : [lastedText(lasted), ...since];
}

/** One line a part that has to be bought, with quantity, name, maker and number; empty when there is none. */
export function listText(get: GetView[]): string {
  return get.flatMap((one) => (one.part === null || isAtHome(one) ? [] : [plain(one, one.part)])).join('\n');
}

/** How long something was in: 'The last one lasted 14 months'. */
export function lastedText({ days, distance }: UsedView): string {
  const time = days > MOST_DAYS ? say('interval-months', { months: Math.round(days / MONTH_DAYS) }) : say('used-days', { days });
  return distance === null ? say('get-lasted-time', { time }) : say('get-lasted', { time, distance: reading(distance) });
}

/** Without spaces at which no line breaks: where it is pasted, they are searched for in vain. */
function plain(get: GetView, { name, maker, number }: PartView): string {
  const told = [amountToBuy(get), name, maker, number, warningText(get.warning)].filter(Boolean);
  return told.join(', ').replaceAll('\u00a0', ' ');
}
