// What a due line says: when it falls, and the one sentence that answers 'why?'.

import type { DueView, WhyView } from '../../door/types';
import { day, interval, reading } from '../../format';
import { list, say, sayKey } from '../../words';

/** When an item falls: by its day or its reading, the one that comes first named first. */
export function whenText({ state, day: date, reading: at, first }: DueView): string {
  if (state === 'overdue') {
    if (first === 'distance' && at) return say('due-was-at', { reading: reading(at) });
    return date === null ? '' : say('due-was-on', { day: day(date) });
  }
  if (state === 'due') return first === 'distance' && at ? say('due-at', { reading: reading(at) }) : '';
  if (date === null) return at ? say('due-at', { reading: reading(at) }) : '';
  if (!at) return say('due-by', { day: day(date) });
  return say(first === 'distance' ? 'due-at-about' : 'due-by-or', { day: day(date), reading: reading(at) });
}

/** When the things at one place on the road fall: one day, or from the first to the last. */
export function fallsText(due: DueView[]): string {
  const days = due.flatMap((item) => (item.day === null ? [] : [item.day])).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return '';
  return first === last ? day(first) : say('road-from-to', { first: day(first), last: day(last) });
}

/** Why: which interval, whose, tightened by what, counted from what. */
export function whyText(why: WhyView): string {
  return say('why', {
    phase: why.first_phase ? 'first' : 'then',
    interval: interval(why.interval),
    source: sourceText(why.source, why.source_name),
    tightened: why.tightened_by.length > 0 ? 'yes' : 'no',
    conditions: list(why.tightened_by.map((key) => sayKey(`condition-${key}`) ?? key)),
    from: countedFrom(why),
  });
}

/** Whose interval it is. */
export function sourceText(source: string, name: string): string {
  return say('source', { source, name });
}

function countedFrom({ from }: WhyView): string {
  if (from === null) return say('from-nothing');
  if (from.from === 'first-use') return say('from-first-use', { day: day(from.day) });
  if (from.reading === null) return say('from-done', { day: day(from.day) });
  return say('from-done-at', { day: day(from.day), reading: reading(from.reading) });
}
