// Two cards of one car: whether the newer contains the older unchanged.
//
// The rule. The older card is the one with the earlier day of issue; of one day, the one whose book holds fewer visits,
// else the second.
//
// 1. Two identification numbers that differ belong to two cars, and nothing else is compared.
// 2. Visits are compared in the span that both cards cover. It begins after the first visit of a card that leaves older
//    ones out to fit, so that what was left out never counts as missing, and ends with the older card's day of issue.
// 3. In the span a visit is the same when day, reading and items are, in whatever order, and its flags are but for a
//    receipt, a photo or an amendment that came since.
// 4. A visit of the older card without its like in the newer one was changed where the newer one has another of its
//    day, and is missing where it has none. What is left over in the newer card was added afterwards.
// 5. The newer card's latest reading is not lower than the older one's, across the newer card's new instruments.
// 6. The book holds no fewer visits than before.
//
// Whether one key signed both is told beside this: a car that was sold goes on under another key.

import { type Claims, type Flag, FLAGS, type Visit } from './claims';
import type { Card } from './read';
import { trailOf } from './trail';

/** The flags that a visit may gain and must not lose. */
const GAINED: readonly Flag[] = ['receipt', 'photo', 'amended'];

/** What differs, in the order of the rule, then of days. */
export interface Difference {
  readonly kind: 'other-car' | 'changed' | 'missing' | 'added' | 'lower' | 'fewer';
  /** The day of the visit, or for `lower` that of the older card's reading. */
  readonly day?: number;
  /** A visit that is marked as amended since. */
  readonly amended?: boolean;
}

export interface Comparison {
  /** The days of issue. */
  readonly older: number;
  readonly newer: number;
  readonly sameKey: boolean;
  /** How many visits of the older card lie in the span that both cover. */
  readonly compared: number;
  readonly differences: readonly Difference[];
}

/** Holds two cards against each other. */
export function compare(one: Card, other: Card): Comparison {
  const swap = one.claims.issued - other.claims.issued || inBook(one.claims) - inBook(other.claims);
  const [older, newer] = swap < 0 ? [one, other] : [other, one];
  const [before, after] = [older.claims, newer.claims];
  const between = { older: before.issued, newer: after.issued, sameKey: older.fingerprint === newer.fingerprint };
  const [vin, otherVin] = [before.vehicle.vin, after.vehicle.vin];
  if (vin !== undefined && otherVin !== undefined && vin !== otherVin) {
    return { ...between, compared: 0, differences: [{ kind: 'other-car' }] };
  }
  const start = Math.max(beginning(before), beginning(after));
  const inSpan = ({ day }: Visit): boolean => day > start && day <= before.issued;
  const old = before.visits.filter(inSpan);
  const differences = [...visitDifferences(old, after.visits.filter(inSpan)), ...lower(before, after)];
  if (inBook(after) < inBook(before)) differences.push({ kind: 'fewer' });
  return { ...between, compared: old.length, differences };
}

function inBook({ visits, leftOut }: Claims): number {
  return visits.length + leftOut;
}

/** The day after which a card has every visit of its book. */
function beginning({ visits, leftOut }: Claims): number {
  return leftOut === 0 ? -Infinity : (visits[0]?.day ?? Infinity);
}

function visitDifferences(old: readonly Visit[], now: readonly Visit[]): Difference[] {
  const left = now.map((visit) => ({ ...visit, likeness: likeness(visit) }));
  const take = (find: (visit: Visit & { likeness: string }) => boolean): Visit | undefined => {
    const at = left.findIndex(find);
    return at < 0 ? undefined : left.splice(at, 1)[0];
  };
  const unlike = old.filter((visit) => {
    const like = likeness(visit);
    return take((other) => other.likeness === like && GAINED.every((flag) => other.flags.has(flag) || !visit.flags.has(flag))) === undefined;
  });
  const gone = unlike.map(({ day }): Difference => {
    const instead = take((other) => other.day === day);
    return instead === undefined ? { kind: 'missing', day } : { kind: 'changed', day, amended: instead.flags.has('amended') };
  });
  const added = left.map(({ day, flags }): Difference => ({ kind: 'added', day, amended: flags.has('amended') }));
  return [...gone, ...added].sort((one, other) => (one.day as number) - (other.day as number));
}

/** What must not differ. */
function likeness({ day, reading, flags, items }: Visit): string {
  const sorted = items.map((item) => JSON.stringify(item)).sort();
  return JSON.stringify([day, reading, FLAGS.filter((flag) => flags.has(flag) && !GAINED.includes(flag)), sorted]);
}

function lower(before: Claims, after: Claims): Difference[] {
  const { latest } = trailOf({ ...after, latest: before.latest });
  return trailOf(after).latest.travelled < latest.travelled ? [{ kind: 'lower', day: before.latest.day }] : [];
}
