// What a card says: the claims, typed, read from deterministic CBOR with the integer keys of the card code, version 1.
//
// Days count from 1970-01-01 and lie in the years 1900 to 2199; readings are whole units of the card within 32 bits.
// Keys that this version does not know are ignored; what it knows must be of the right type and range.

import { type Cbor, CborError, CborMap, decode } from './cbor';
import { Refusal } from './refusal';

/** A number of a catalogue item, or the text of an item of the owner's own. */
export type Item = number | string;

/** The unit in which all readings of a card count. */
export type Unit = 'km' | 'mi';

/** What drives the car, at the place of its number in the code. */
export const ENGINES = ['petrol', 'diesel', 'petrol-hybrid', 'diesel-hybrid', 'gas', 'electric', 'other'] as const;
export type Engine = (typeof ENGINES)[number];

/** By whom a visit was done and how well it is recorded, at the place of its bit in the sum. */
export const FLAGS = ['owner', 'workshop', 'receipt', 'photo', 'late', 'amended'] as const;
export type Flag = (typeof FLAGS)[number];

export interface Vehicle {
  readonly name: string;
  readonly vin: string | undefined;
  readonly engine: Engine | undefined;
  readonly description: string | undefined;
  readonly firstUse: number | undefined;
}

export interface Reading {
  readonly day: number;
  readonly reading: number;
}

export interface Visit extends Reading {
  readonly flags: ReadonlySet<Flag>;
  readonly items: readonly Item[];
}

export interface NextDue {
  readonly item: Item;
  readonly day: number | null;
  readonly reading: number | null;
}

export interface InstrumentChange {
  readonly day: number;
  readonly oldReading: number;
  readonly newReading: number;
}

export interface Claims {
  readonly issued: number;
  readonly vehicle: Vehicle;
  readonly unit: Unit;
  readonly latest: Reading;
  /** Oldest first. */
  readonly visits: readonly Visit[];
  /** How many older visits the book holds beyond these. */
  readonly leftOut: number;
  /** The first 16 bytes of the head of the book. */
  readonly head: Uint8Array | undefined;
  readonly next: readonly NextDue[];
  readonly instruments: readonly InstrumentChange[];
}

/** How many lines of what comes next a card carries at most. */
const NEXT_MAX = 6;

/** 1900-01-01 and 2199-12-31. */
const FIRST_DAY = -25_567;
const LAST_DAY = 84_005;

/** Reads claims. Throws a Refusal when they are no deterministic CBOR, or one is missing or wrong. */
export function readClaims(bytes: Uint8Array): Claims {
  try {
    return claims(asMap(decode(bytes)));
  } catch (error) {
    if (error instanceof CborError) throw new Refusal('claims', `the signed content is no card: ${error.message}`);
    throw error;
  }
}

function claims(map: CborMap): Claims {
  const issued = need(map, 1, asDay);
  if (issued < 0) throw wrong('a day of issue before 1970');
  const visits = need(map, 6, asVisits);
  const inBook = get(map, 7, asUnsigned) ?? visits.length;
  if (inBook < visits.length) throw wrong('fewer visits in the book than on the card');
  const next = get(map, 9, listOf(asNext)) ?? [];
  if (next.length > NEXT_MAX) throw wrong('more coming work than a card may carry');
  return {
    issued,
    vehicle: need(map, 3, asVehicle),
    unit: get(map, 4, oneOf(['km', 'mi'] as const)) ?? 'km',
    latest: need(map, 5, asReading),
    visits,
    leftOut: inBook - visits.length,
    head: get(map, 8, asHead),
    next,
    instruments: get(map, 10, listOf(asInstrument)) ?? [],
  };
}

function asVehicle(value: Cbor): Vehicle {
  const map = asMap(value);
  return {
    name: need(map, 1, asText),
    vin: get(map, 2, asText),
    engine: get(map, 3, oneOf(ENGINES)),
    description: get(map, 4, asText),
    firstUse: get(map, 5, asDay),
  };
}

function asReading(value: Cbor): Reading {
  const [day, reading] = asArray(value, 2);
  return { day: asDay(day), reading: asInteger(reading) };
}

/** Each visit stands as the difference to the one before it, the first as the difference to day 0 and reading 0. */
function asVisits(value: Cbor): Visit[] {
  const visits: Visit[] = [];
  for (const row of asArray(value)) visits.push(visitAfter(visits[visits.length - 1], row));
  return visits;
}

function visitAfter(before: Visit | undefined, row: Cbor): Visit {
  const [days, distance, flags, ...items] = asArray(row);
  const later = asInteger(days);
  if (before !== undefined && later < 0) throw wrong('visits out of order');
  return {
    day: asDay((before?.day ?? 0) + later),
    reading: asInteger((before?.reading ?? 0) + asInteger(distance)),
    flags: asFlags(flags),
    items: items.map(asItem),
  };
}

function asFlags(value: Cbor | undefined): ReadonlySet<Flag> {
  const sum = asUnsigned(value);
  return new Set(FLAGS.filter((_, bit) => (sum & (1 << bit)) !== 0));
}

function asItem(value: Cbor | undefined): Item {
  return typeof value === 'string' ? value : asUnsigned(value);
}

function asNext(value: Cbor): NextDue {
  const [item, day, reading] = asArray(value, 3);
  return {
    item: asItem(item),
    day: day === null ? null : asDay(day),
    reading: reading === null ? null : asInteger(reading),
  };
}

function asInstrument(value: Cbor): InstrumentChange {
  const [day, oldReading, newReading] = asArray(value, 3);
  return { day: asDay(day), oldReading: asInteger(oldReading), newReading: asInteger(newReading) };
}

function asHead(value: Cbor): Uint8Array {
  if (value instanceof Uint8Array && value.length === 16) return value;
  throw wrong('a head of the book that is not 16 bytes');
}

function need<T>(map: CborMap, key: number, read: (value: Cbor) => T): T {
  const value = map.get(key);
  if (value === undefined) throw wrong(`nothing under key ${key}`);
  return read(value);
}

function get<T>(map: CborMap, key: number, read: (value: Cbor) => T): T | undefined {
  const value = map.get(key);
  return value === undefined ? undefined : read(value);
}

function listOf<T>(read: (value: Cbor) => T): (value: Cbor) => T[] {
  return (value) => asArray(value).map(read);
}

function oneOf<T>(choices: readonly T[]): (value: Cbor) => T {
  return (value) => {
    const choice = choices[asUnsigned(value)];
    if (choice === undefined) throw wrong('a number that stands for nothing');
    return choice;
  };
}

function asMap(value: Cbor): CborMap {
  if (value instanceof CborMap) return value;
  throw wrong('something other than a map');
}

function asArray(value: Cbor, length?: number): readonly Cbor[] {
  if (Array.isArray(value) && (length === undefined || value.length === length)) return value as readonly Cbor[];
  throw wrong('something other than an array of its length');
}

function asText(value: Cbor): string {
  if (typeof value === 'string') return value;
  throw wrong('something other than a text');
}

function asInteger(value: Cbor | undefined): number {
  if (typeof value === 'number' && value >= -(2 ** 31) && value < 2 ** 31) return value;
  throw wrong('something other than an integer of 32 bits');
}

function asUnsigned(value: Cbor | undefined): number {
  if (typeof value === 'number' && value >= 0 && value < 2 ** 32) return value;
  throw wrong('something other than an unsigned integer of 32 bits');
}

function asDay(value: Cbor | undefined): number {
  const day = asInteger(value);
  if (day < FIRST_DAY || day > LAST_DAY) throw wrong('a day outside the years 1900 to 2199');
  return day;
}

function wrong(what: string): Refusal {
  return new Refusal('claims', `the signed content is no card: ${what}`);
}
