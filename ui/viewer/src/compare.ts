// Two cards of one car: whether the newer contains the older unchanged. The core goes by the same rule (`card::compare`).
//
// The rule. The older card is the one with the earlier day of issue; of one day, the one whose book holds fewer visits,
// else the second.
//
// 1. Where both show an identification number, or a day of first use, the two are equal. The name may change.
// 2. The newer card's latest reading is not of an earlier day, and not lower unless the newer card names an instrument
//    replaced on the day of the older card's reading or later.
// 3. Each new instrument of the older card is on the newer one, with day and both readings.
// 4. The newer card's book holds no fewer visits.
// 5. A visit is the same when its day, its reading, by whom it was done and its items are, these in whatever order but
//    each as often. A receipt may be filed later and an amendment marks a visit, so the other flags may change.
//    Each visit of the older card is paired with the first of the newer one that is the same and not yet paired.
// 6. A card that leaves out old visits to fit has all visits of a day only after that of its first one. What is left
//    over of the older card on such a day of the newer one was changed where the newer one has an unpaired visit of
//    that very day, and is missing where it has none. On other days it may have been left out to fit.
// 7. What is left over of the newer card, of a day before the older one was issued of which the older one has all
//    visits, was added afterwards: no breach, but worth a question.
//
// Readings in different units stand each for the distance from their number to the next, and are the same where these
// overlap. Whether one key signed both is told beside this: a car that was sold goes on under another key.

import type { Claims, InstrumentChange, Unit, Visit } from './claims';
import type { Card } from './read';

/** What differs, in the order of the rule, visits in that of their card. */
export interface Difference {
  readonly kind: 'other-car' | 'first-use' | 'latest' | 'instrument' | 'fewer' | 'changed' | 'missing' | 'added';
  /** The day of the instrument or visit. */
  readonly day?: number;
  /** A visit that is marked as amended since. */
  readonly amended?: boolean;
}

export interface Comparison {
  /** The days of issue. */
  readonly older: number;
  readonly newer: number;
  readonly sameKey: boolean;
  /** Both show an identification number, so that it is certain whether they are of one car. */
  readonly carKnown: boolean;
  /** How many visits of the older card are on the newer one. */
  readonly same: number;
  /** Nothing differs but what was added. */
  readonly contained: boolean;
  readonly differences: readonly Difference[];
}

const MILLIMETRES = { km: 1_000_000, mi: 1_609_344 };

/** Holds two cards against each other. */
export function compare(one: Card, other: Card): Comparison {
  const order = one.claims.issued - other.claims.issued || inBook(one.claims) - inBook(other.claims);
  const [older, newer] = order < 0 ? [one, other] : [other, one];
  const [before, after] = [older.claims, newer.claims];
  const visits = visitDifferences(before, after);
  const differences = [...wholeDifferences(before, after), ...visits.differences];
  return {
    older: before.issued,
    newer: after.issued,
    sameKey: older.fingerprint === newer.fingerprint,
    carKnown: before.vehicle.vin !== undefined && after.vehicle.vin !== undefined,
    same: visits.same,
    contained: differences.every(({ kind }) => kind === 'added'),
    differences,
  };
}

function inBook({ visits, leftOut }: Claims): number {
  return visits.length + leftOut;
}

function wholeDifferences(before: Claims, after: Claims): Difference[] {
  const lost = before.instruments.filter((change) => !after.instruments.some((other) => isSameInstrument(change, before.unit, other, after.unit)));
  return [
    ...when(differ(before.vehicle.vin, after.vehicle.vin), 'other-car'),
    ...when(differ(before.vehicle.firstUse, after.vehicle.firstUse), 'first-use'),
    ...when(isLatestLower(before, after), 'latest'),
    ...lost.map(({ day }): Difference => ({ kind: 'instrument', day })),
    ...when(inBook(after) < inBook(before), 'fewer'),
  ];
}

function when(condition: boolean, kind: Difference['kind']): Difference[] {
  return condition ? [{ kind }] : [];
}

/** Only what both say can differ. */
function differ(one: unknown, other: unknown): boolean {
  return one !== undefined && other !== undefined && one !== other;
}

function isLatestLower(before: Claims, after: Claims): boolean {
  const [then, now] = [before.latest, after.latest];
  const replaced = after.instruments.some(({ day }) => day >= then.day);
  return now.day < then.day || (isLower(now.reading, after.unit, then.reading, before.unit) && !replaced);
}

function isSameInstrument(one: InstrumentChange, unit: Unit, other: InstrumentChange, otherUnit: Unit): boolean {
  const [same, sameNew] = [[one.oldReading, other.oldReading], [one.newReading, other.newReading]].map(([a, b]) => isSameReading(a as number, unit, b as number, otherUnit));
  return one.day === other.day && same === true && sameNew === true;
}

function visitDifferences(before: Claims, after: Claims): { same: number; differences: Difference[] } {
  const free = after.visits.map((visit) => ({ ...visit, likeness: likeness(visit) }));
  const take = (find: (visit: Visit & { likeness: string }) => boolean): Visit | undefined => {
    const at = free.findIndex(find);
    return at < 0 ? undefined : free.splice(at, 1)[0];
  };
  const over = before.visits.filter((visit) => {
    const like = likeness(visit);
    return take((other) => other.likeness === like && isSameReading(visit.reading, before.unit, other.reading, after.unit)) === undefined;
  });
  const gone = over.filter(({ day }) => hasAllOf(after, day)).map(({ day }): Difference => {
    const instead = take((other) => other.day === day);
    return instead === undefined ? { kind: 'missing', day } : { kind: 'changed', day, amended: instead.flags.has('amended') };
  });
  const added = free.filter(({ day }) => day < before.issued && hasAllOf(before, day)).map(({ day }): Difference => ({ kind: 'added', day }));
  return { same: before.visits.length - over.length, differences: [...gone, ...added] };
}

/** What must not differ, but for the reading. */
function likeness({ day, flags, items }: Visit): string {
  return JSON.stringify([day, flags.has('owner'), flags.has('workshop'), items.map((item) => JSON.stringify(item)).sort()]);
}

/** Whether a card has all visits of a day. */
function hasAllOf({ visits, leftOut }: Claims, day: number): boolean {
  return leftOut === 0 || (visits[0]?.day ?? day) < day;
}

function isSameReading(one: number, unit: Unit, other: number, otherUnit: Unit): boolean {
  return !isLower(one, unit, other, otherUnit) && !isLower(other, otherUnit, one, unit);
}

/** Whether all of what one reading stands for lies below the other. */
function isLower(one: number, unit: Unit, other: number, otherUnit: Unit): boolean {
  return unit === otherUnit ? one < other : (one + 1) * MILLIMETRES[unit] <= other * MILLIMETRES[otherUnit];
}
