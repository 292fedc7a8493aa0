// What stands beside a thing to get: how much is left to buy, what to ask for, how long the last one lasted, and the
// whole list as plain text for a message.

import type { GetView, UsedView } from '../../../door/types';
import { day, dayTime, money, quantity, reading, warningText } from '../../../format';
import { locale, say, sayKey } from '../../../words';

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

/** What the guide to the job calls a thing of which the book holds no part; empty for a part of the book. */
export function supplyName({ supply }: GetView): string {
  return supply === '' ? '' : (sayKey(`supply-${supply}`) ?? supply);
}

/** How much of it there is still to buy, in its measure; empty where nobody knows. */
export function amountToBuy({ part, to_buy, measure }: GetView): string {
  const amount = to_buy || (part?.quantity ?? '');
  return amount === '' ? '' : quantity({ quantity: amount, measure });
}

/** 'At home: 1 piece'; nothing when there is none. */
export function atHomeText({ at_home, measure }: GetView): string {
  return at_home === '' ? '' : say('get-at-home', { amount: quantity({ quantity: at_home, measure }) });
}

/** Where and when it was bought the last time, and for how much: the last price, or else the last visit. */
export function lastText({ paid, workshop, day: date }: GetView): string {
  const where = (place: string) => (place === '' ? say('get-by-owner') : place);
  if (paid !== null) return say('get-last-price', { day: day(paid.day), where: where(paid.workshop), price: money(paid.price) });
  return date === null ? '' : say('get-last', { day: day(date), where: where(workshop) });
}

/** 'The last one lasted 14 months and 21 300 km', 'In since Oct 2024': as much of it as the book tells. */
export function usedTexts({ lasted, part, day: date }: GetView): string[] {
  const since = part !== null && date !== null ? [say('get-since', { month: monthYear.format(dayTime(date)) })] : [];
  return lasted === null ? since : [lastedText(lasted), ...since];
}

/** One line a part that has to be bought, with quantity, name, maker and number; empty when there is none. */
export function listText(get: GetView[]): string {
  return get.flatMap((one) => (isAtHome(one) ? [] : [plain(one)])).filter(Boolean).join('\n');
}

/** How long something was in: 'The last one lasted 14 months'. */
export function lastedText({ days, distance }: UsedView): string {
  const time = days > MOST_DAYS ? say('interval-months', { months: Math.round(days / MONTH_DAYS) }) : say('used-days', { days });
  return distance === null ? say('get-lasted-time', { time }) : say('get-lasted', { time, distance: reading(distance) });
}

/** Without spaces at which no line breaks: where it is pasted, they are searched for in vain. */
function plain(get: GetView): string {
  const what = get.part === null ? [supplyName(get)] : [get.part.name, get.part.maker, get.part.number];
  if (what.every((text) => text === '')) return '';
  const told = [amountToBuy(get), ...what, warningText(get.warning)].filter(Boolean);
  return told.join(', ').replaceAll('\u00a0', ' ');
}
