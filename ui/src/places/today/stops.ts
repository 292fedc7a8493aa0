// What a stop on the road says: on the strip in a few words, to a reader in a sentence.

import { day, fromNow, itemName } from '../../format';
import { list, say } from '../../words';
import type { Stop } from './lib';

/** What hangs on the strip: the day, and the first thing with how many more. */
export function stopWords(stop: Stop): string[] {
  return [stop.before ? say('road-before') : daysText(stop), titleText(stop)];
}

/** One day, or from the first to the last. */
export function daysText({ days: { first, last } }: Stop): string {
  return first === last ? day(first) : say('road-from-to', { first: day(first), last: day(last) });
}

/** How a stop stands: its state, or how many visits and when. */
export function standText({ state, visits, days }: Stop, today: string): string {
  if (visits.length > 0) return `${say('stop-visits', { count: visits.length })}, ${fromNow(today, days.first)}`;
  return state === 'overdue' ? say('state-overdue') : `${say(`state-${state}`)}, ${fromNow(today, days.first)}`;
}

/** The whole stop in one sentence that begins with what stands on the strip. */
export function stopSentence(stop: Stop, today: string): string {
  const words = stopWords(stop).join(', ');
  const items = list(stop.items.map(itemName));
  return say('stop-says', { words, what: standText(stop, today), count: stop.items.length, items });
}

function titleText({ items }: Stop): string {
  const [first, ...others] = items;
  if (!first) return '';
  return others.length === 0 ? itemName(first) : say('and-more', { name: itemName(first), count: others.length });
}
