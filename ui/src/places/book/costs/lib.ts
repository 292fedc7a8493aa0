// What the car costs: the bills of one currency as bars and as the rows of the table behind them.

import type { BillView, CostsView, PerDistanceView } from '../../../door/types';
import { decimal, distance, money, number } from '../../../format';
import type { Bar } from '../../../parts/plot/stack';
import { locale, say, sayKey } from '../../../words';

const MONTHS = 12;

const monthFormat = new Intl.DateTimeFormat(locale, { month: 'short', year: 'numeric', timeZone: 'UTC' });

/** The bills of one currency. */
export function billsIn(bills: BillView[], currency: string): BillView[] {
  return bills.filter((bill) => bill.currency === currency);
}

/** The last twelve months up to today's, newest first; a month without a bill cost nothing. */
export function lastMonths(today: string): string[] {
  const [year, month] = [Number(today.slice(0, 4)), Number(today.slice(5, 7))];
  return Array.from({ length: MONTHS }, (_, back) => new Date(Date.UTC(year, month - 1 - back, 1)).toISOString().slice(0, 7));
}

/** The bars of these periods: how much of each class, in main units. */
export function barsOf(bills: BillView[], periods: string[], classes: string[]): Bar[] {
  return periods.map((period) => {
    const bill = bills.find((one) => one.period === period);
    const minor = (kind: string) => bill?.parts.find((part) => part.class === kind)?.minor ?? 0;
    return { name: periodText(period), amounts: classes.map((kind) => minor(kind) / 10 ** (bill?.decimals ?? 0)) };
  });
}

/** The bills as rows of a table: the period, each class, and all together. */
export function billRows(bills: BillView[], classes: string[]): string[][] {
  return bills.map((bill) => {
    const part = (kind: string) => bill.parts.find((one) => one.class === kind)?.money.number ?? '0';
    const period = periodText(bill.period);
    return [bill.over ? period : say('costs-running', { period }), ...classes.map((kind) => decimal(part(kind))), decimal(bill.total.number)];
  });
}

/** `2026`, or `May 2026`. */
export function periodText(period: string): string {
  return period.length === 4 ? period : monthFormat.format(Date.parse(`${period}-01T00:00:00Z`)).replace(' ', '\u00a0');
}

export function classText(kind: string): string {
  return sayKey(`cost-${kind}`) ?? kind;
}

/** The sum of a bar in whole units: its decimals stand in the table. */
export function barTotal({ amounts }: Bar): string {
  return number(Math.round(amounts.reduce((sum, amount) => sum + amount, 0)));
}

/** The plot in a sentence; nothing without a bill. */
export function costSentence(bills: BillView[], currency: string): string {
  const sorted = bills.toSorted((a, b) => Number(b.total.number) - Number(a.total.number));
  const [first, last, most] = [bills[0], bills.at(-1), sorted[0]];
  if (!first || !last || !most) return '';
  return say('costs-says', { first: periodText(first.period), last: periodText(last.period), currency, most: money(most.total), when: periodText(most.period) });
}

/** Over which distance: the last year, or everything. */
export function overText({ period, distance: over }: PerDistanceView): string {
  const told = { distance: distance(over.count, over.unit) };
  return period === 'last-year' ? say('costs-last-year', told) : say('costs-all', told);
}

/** To how many decimals a kilometre is told: a column reads well only when all of it has as many. */
const EACH = 3;

/** What one kilometre or mile came to, for each class and all together. */
export function perRows(distances: PerDistanceView[], classes: string[]): string[][] {
  const each = (text: string) => decimal(Number(text).toFixed(EACH));
  const part = (one: PerDistanceView, kind: string) => one.parts.find((each) => each.class === kind)?.number ?? '0';
  return [
    ...classes.map((kind) => [classText(kind), ...distances.map((one) => each(part(one, kind)))]),
    [say('column-all'), ...distances.map((one) => each(one.total))],
  ];
}

/** Whether there is anything to show. */
export function isEmpty({ years }: CostsView): boolean {
  return years.length === 0;
}
