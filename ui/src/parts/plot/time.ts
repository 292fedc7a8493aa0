// How a moment on a time axis is called: as coarse as the span allows.

import { locale } from '../../words';

const DAY_MS = 86_400_000;
/** Up to so many days, single days are told apart. */
const DAYS_APART = 75;

const monthFormat = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });
const dayFormat = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', timeZone: 'UTC' });

/** Words for the moments between two others: a year at its first day, or else a month, or a day where the span is short. */
export function timeWords(from: number, to: number): (time: number) => string {
  const close = to - from < DAYS_APART * DAY_MS;
  return (time) => {
    const at = new Date(time);
    if (close) return dayFormat.format(at);
    return at.getUTCMonth() === 0 ? String(at.getUTCFullYear()) : monthFormat.format(at);
  };
}
