// What stands beside a thing to get: how long the last one lasted, and the whole list as plain text for a message.

import type { GetView, PartView, UsedView } from '../../door/types';
import { dayTime, quantity, reading } from '../../format';
import { locale, say } from '../../words';

const MONTH_DAYS = 30.44;
/** Longer than this, a time is told in months. */
const MOST_DAYS = 60;

const monthYear = new Intl.DateTimeFormat(locale, { month: 'short', year: 'numeric', timeZone: 'UTC' });

/** 'The last one lasted 14 months and 21 300 km', 'In since Oct 2024': as much of it as the book tells. */
export function usedTexts({ lasted, part, day }: GetView): string[] {
  const since = part !== null && day !== null ? [say('get-since', { month: monthYear.format(dayTime(day)) })] : [];
  return lasted === null ? since : [lastedText(lasted), ...since];
}

/** One line a part, with quantity, name, maker and number; empty when no part is known. */
export function listText(get: GetView[]): string {
  return get.flatMap(({ part }) => (part === null ? [] : [plain(part)])).join('\n');
}

function lastedText({ days, distance }: UsedView): string {
  const time = days > MOST_DAYS ? say('interval-months', { months: Math.round(days / MONTH_DAYS) }) : say('used-days', { days });
  return distance === null ? say('get-lasted-time', { time }) : say('get-lasted', { time, distance: reading(distance) });
}

/** Without spaces at which no line breaks: where it is pasted, they are searched for in vain. */
function plain(part: PartView): string {
  const told = [quantity(part), part.name, part.maker, part.number].filter(Boolean);
  return told.join(', ').replaceAll('\u00a0', ' ');
}
