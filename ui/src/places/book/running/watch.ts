// Lasting changes of consumption, in words.

import type { AlarmView, ConsumptionView, KindUseView } from '../../../door/types';
import { day, decimal } from '../../../format';
import { say } from '../../../words';

/** The kind whose consumption has risen and not come back, as of a fill on this day. */
export function raisedOn({ kinds }: ConsumptionView, on: string): KindUseView | undefined {
  return kinds.find(({ watch }) => watch.standing?.alarm.raised === on);
}

/** Since when, by about how much, and within which ends: never one number alone. */
export function watchText({ since, likely, size }: AlarmView): string {
  return say('watch-says', { since: day(since), likely: decimal(likely), low: decimal(size.low), high: decimal(size.high) });
}

/** An earlier change, on one line. */
export function shiftText({ since, raised, size }: AlarmView): string {
  return say('watch-shift', { since: day(since), raised: day(raised), low: signed(size.low), high: signed(size.high) });
}

/** A change with its sign, as typeset: `+4.2`, `−2.5`. */
export function signed(text: string): string {
  const bare = decimal(text.replace(/^[-+]/, ''));
  if (Number(text) === 0) return bare;
  return text.startsWith('-') ? `−${bare}` : `+${bare}`;
}
