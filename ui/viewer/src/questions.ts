// What a card gives cause to ask: worked out from its claims and today's day, for whoever stands before the car.
//
// A question is no accusation. Each kind is asked at most once, with how often it was found and the place where it
// shows most. A card carries no intervals, so the bounds are common practice: the longest interval that the catalogue
// gives any engine oil, and the longest that it gives each item of weight.
//
// The core works out the same by itself, where the rule and its bounds are explained (`card::questions`); a file of
// invented histories holds both to the same answers.

import type { Claims, Flag, Item } from './claims';
import { days, falls, GAP, GAP_DAYS, gaps, jumps, type Pair, pairs, type Trail, trailOf, way } from './trail';

/** What to ask, by the end of its sentence's name, with what fills the places of the sentence. */
export interface Question {
  readonly kind: string;
  readonly count?: number;
  readonly of?: number;
  /** The day that it speaks of, or the first of two, and its reading. */
  readonly day?: number;
  readonly reading?: number;
  /** The second day and its reading. */
  readonly then?: number;
  readonly shown?: number;
  readonly items?: readonly Item[];
}

const MOST = 8;
const OLD_CARD_DAYS = 90;

/** Distances on a card in kilometres and one in miles. */
const BELT = { km: 120_000, mi: 74_565 };
const NEVER = { km: Infinity, mi: Infinity };

const TIMING_BELT = 11;
const TIMING_CHAIN = 40;

/** Number in the catalogue, whether an electric car has it too, days and distance that it lasts: oil, belt, brake fluid, coolant. */
const WEIGHTY = [[1, false, GAP_DAYS, GAP], [TIMING_BELT, false, 2_557, BELT], [10, true, GAP_DAYS, NEVER], [9, false, 1_827, NEVER]] as const;

/** What the claims give cause to ask on a day, the weightiest first. */
export function questions(claims: Claims, today: number): Question[] {
  const trail = trailOf(claims);
  const { visits, leftOut } = claims;
  const asked = [
    visits.length === 0 && { kind: 'no-visits' },
    lower(trail),
    jump(claims, trail),
    ahead(claims),
    gap(claims, trail),
    before(claims, trail),
    unrecorded(claims, trail),
    passed(claims, today),
    age(claims, today),
    instruments(claims),
    visits.length > 0 && { kind: 'receipts', count: visits.filter(({ flags }) => flags.has('receipt')).length, of: visits.length },
    flagged(claims, 'late'),
    flagged(claims, 'amended'),
    leftOut > 0 && { kind: 'left-out', count: leftOut },
  ];
  return asked.filter((question): question is Question => question !== false).slice(0, MOST);
}

function lower({ all }: Trail): Question | false {
  return between('lower', pairs(all).filter(falls), ([from, to]) => way([to, from]));
}

function jump(claims: Claims, { all }: Trail): Question | false {
  return between('jump', pairs(all).filter((pair) => jumps(claims, pair)), () => 0);
}

function gap(claims: Claims, trail: Trail): Question | false {
  const { unit } = claims;
  return between('gap', gaps(claims, trail), (pair) => Math.max(days(pair) * GAP[unit], way(pair) * GAP_DAYS));
}

function before({ vehicle, leftOut, unit }: Claims, { visits }: Trail): Question | false {
  const [first] = visits;
  if (first === undefined || leftOut > 0) return false;
  const { day, reading, travelled } = first;
  return (day - (vehicle.firstUse ?? day) > GAP_DAYS || travelled > GAP[unit]) && { kind: 'before', day, reading };
}

function ahead({ visits, latest, issued }: Claims): Question | false {
  const late = [...visits, latest].map(({ day }) => day).filter((day) => day > issued);
  return late.length > 0 && { kind: 'ahead', count: late.length, day: last(late) };
}

function unrecorded({ visits, vehicle, issued, next, unit }: Claims, { latest, visits: [first] }: Trail): Question | false {
  if (first === undefined) return false;
  const age = issued - (vehicle.firstUse ?? first.day);
  const has = (number: Item): boolean => visits.some(({ items }) => items.includes(number));
  const chained = has(TIMING_CHAIN) || next.some(({ item }) => item === TIMING_CHAIN);
  const burns = ![undefined, 'electric', 'other'].includes(vehicle.engine);
  const items = WEIGHTY.filter(([number, always, time, distance]) =>
    (always || burns) && !(number === TIMING_BELT && chained) && (age > time || latest.travelled > distance[unit]) && !has(number));
  return ofItems('unrecorded', items.map(([number]) => number));
}

function passed({ next, latest }: Claims, today: number): Question | false {
  const passed = next.filter(({ day, reading }) => (day ?? today) < today || (reading ?? latest.reading) < latest.reading);
  return ofItems('passed', passed.map(({ item }) => item));
}

/** Somewhere on earth it is tomorrow already. */
function age({ issued: day }: Claims, today: number): Question | false {
  if (today - day < -1) return { kind: 'clock', day };
  return today - day > OLD_CARD_DAYS && { kind: 'old-card', day };
}

function instruments({ instruments }: Claims): Question | false {
  const [first] = instruments;
  if (first === undefined) return false;
  const { day, oldReading, newReading } = instruments.reduce((one, next) => (next.day >= one.day ? next : one), first);
  return { kind: 'instruments', count: instruments.length, day, reading: oldReading, shown: newReading };
}

function flagged({ visits }: Claims, flag: Flag): Question | false {
  const days = visits.filter(({ flags }) => flags.has(flag)).map(({ day }) => day);
  return days.length > 0 && { kind: flag, count: days.length, of: visits.length, day: last(days) };
}

function ofItems(kind: string, items: readonly Item[]): Question | false {
  return items.length > 0 && { kind, items };
}

/** Names the stretch of which there is most, and of several of those the first. */
function between(kind: string, found: readonly Pair[], most: (pair: Pair) => number): Question | false {
  if (found.length === 0) return false;
  const [from, to] = found.reduce((best, next) => (most(next) > most(best) ? next : best));
  return { kind, count: found.length, day: from.day, reading: from.reading, then: to.day, shown: to.reading };
}

function last(days: readonly number[]): number {
  return days.reduce((one, other) => Math.max(one, other));
}
