// A car's own numbers as they stand on the page: the owner's as he typed it, a typical one marked as such with its
// source, or the handbook. Nothing typical is ever shown as this car's.

import type { BoundsView, OriginView, TypicalView, ValueView } from '../door/types';
import { decimal, measuredValue } from '../format';
import { say, sayKey } from '../words';

/** What a value is called. */
export function valueName(key: string): string {
  return sayKey(`value-${key}`) ?? key;
}

/** A value as the owner typed it, with the unit where he typed none: the door knows. */
export function ownText({ text, unit }: { text: string; unit: string | null }): string {
  return unit === null ? text : `${text}\u00a0${unit}`;
}

/** `20 to 30 N·m`, `at least 1.6 mm`. */
export function boundsText({ low, high }: BoundsView, unit: string): string {
  if (high === null) return say('value-at-least', { low: measuredValue(low, unit) });
  return high === low ? measuredValue(low, unit) : say('value-between', { low: decimal(low), high: measuredValue(high, unit) });
}

/** A typical value with its case and, in brackets, the same in newton metres where it was printed in pound-force feet. */
export function typicalText({ case: when, bounds, unit, newton_metres }: TypicalView): string {
  const printed = boundsText(bounds, unit);
  const value = newton_metres === null ? printed : say('value-converted', { printed, newton: boundsText(newton_metres, 'N·m') });
  return say('value-case', { case: sayKey(`typical-${when}`) ?? when, value });
}

/** Where a caution or a typical value comes from. */
export function originText({ source, name }: OriginView): string {
  if (source === 'from-memory') return say('origin-memory', { name });
  return source === 'common-practice' ? say('origin-practice') : name;
}

/** What is known of a value, in one breath, as it is read out. */
export function spokenValue({ key, known }: ValueView): string {
  const what = valueName(key);
  if (known.is === 'own') return say('value-is', { what, value: ownText(known) });
  if (known.is === 'handbook') return say('value-is', { what, value: say('value-see-handbook') });
  return say('value-is', { what, value: say('value-only-typical', { cases: known.cases.map(typicalText).join('; ') }) });
}

/** The sources of these cases, each once. */
export function originsOf(cases: TypicalView[]): string[] {
  return [...new Set(cases.map(({ source }) => originText(source)))];
}
