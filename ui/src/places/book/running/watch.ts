// Lasting changes of consumption, in words.

import type { AlarmView } from '../../../door/types';
import { day, decimal } from '../../../format';
import { say } from '../../../words';

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
