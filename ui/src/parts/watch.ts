// Consumption that has risen and not come back, in words.

import type { AlarmView } from '../door/types';
import { day, decimal } from '../format';
import { say } from '../words';

/** Since when, by about how much, and within which ends: never one number alone. */
export function watchText({ since, likely, size }: AlarmView): string {
  return say('watch-says', { since: day(since), likely: decimal(likely), low: decimal(size.low), high: decimal(size.high) });
}
