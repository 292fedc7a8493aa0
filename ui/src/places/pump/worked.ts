// Amount, price and total while they are typed: the third is shown as it is worked out from the other two, with every
// decimal exact. It is only shown: what is sent is what was typed, and the door works it out for the book.

/** The three as they stand in their fields; empty where nothing was typed. */
export interface Three {
  amount: string;
  price: string;
  total: string;
}

export type Third = keyof Three;

/** What follows, with a point for its decimals. */
export interface Worked {
  what: Third;
  value: string;
}

/** Decimals as pumps show them; those of a total are the currency's own. */
const AMOUNT_DECIMALS = 2;
const PRICE_DECIMALS = 3;
/** A field takes no more decimals than this. */
const MOST_DECIMALS = 9;

/** A number of so many decimals: `units` is it without its point. */
interface Exact {
  units: bigint;
  decimals: number;
}

/** The one that is missing, worked out from the other two; nothing unless just one is missing and both are numbers. */
export function thirdOf({ amount, price, total }: Three, currency: string): Worked | undefined {
  const empty = (['amount', 'price', 'total'] as const).filter((key) => ({ amount, price, total })[key].trim() === '');
  const [what] = empty;
  if (what === undefined || empty.length > 1) return undefined;
  const [a, p, t] = [amount, price, total].map(exact);
  if (what === 'total' && a && p) return worked(what, times(a, p, decimalsOf(currency)));
  if (what === 'price' && t && a) return worked(what, over(t, a, PRICE_DECIMALS));
  if (what === 'amount' && t && p) return worked(what, over(t, p, AMOUNT_DECIMALS));
  return undefined;
}

/** The decimals of a currency (ISO 4217); two where it is not known, as most have. */
export function decimalsOf(currency: string): number {
  try {
    return new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
  } catch {
    return 2;
  }
}

/** A number above nothing, with a point or a comma before its decimals. */
function exact(text: string): Exact | undefined {
  const [, whole, rest = ''] = /^(\d{1,9})(?:[.,](\d*))?$/.exec(text.trim()) ?? [];
  if (whole === undefined || rest.length > MOST_DECIMALS) return undefined;
  const units = BigInt(whole + rest);
  return units > 0n ? { units, decimals: rest.length } : undefined;
}

function times(a: Exact, b: Exact, decimals: number): Exact | undefined {
  return rounded(a.units * b.units, 10n ** BigInt(a.decimals + b.decimals), decimals);
}

function over(a: Exact, b: Exact, decimals: number): Exact | undefined {
  return rounded(a.units * 10n ** BigInt(b.decimals), b.units * 10n ** BigInt(a.decimals), decimals);
}

/** A fraction to so many decimals, halves up. */
function rounded(above: bigint, below: bigint, decimals: number): Exact | undefined {
  const units = (2n * above * 10n ** BigInt(decimals) + below) / (2n * below);
  return units > 0n ? { units, decimals } : undefined;
}

function worked(what: Third, value: Exact | undefined): Worked | undefined {
  if (!value) return undefined;
  const digits = value.units.toString().padStart(value.decimals + 1, '0');
  const point = digits.length - value.decimals;
  return { what, value: value.decimals === 0 ? digits : `${digits.slice(0, point)}.${digits.slice(point)}` };
}
