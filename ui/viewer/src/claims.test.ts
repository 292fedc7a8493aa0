import { describe, expect, it } from 'vitest';

import { readClaims } from './claims';
import { hex, vector } from './test-card';

/** The least that a card says: day of issue 1, a car named A, latest reading [1, 2], no visits. */
const LEAST: Readonly<Record<number, string>> = { 1: '01', 3: 'a1016141', 5: '820102', 6: '80' };

describe('the vector', () => {
  it('says what its makers put into it', () => {
    // Read off the bytes by hand.
    expect(readClaims(hex(vector.claims_cbor))).toEqual({
      issued: 20_781,
      vehicle: { name: 'Blue estate', vin: '1M8GDM9AXKP042788', engine: 'petrol', description: 'Invented 1.6 2014', firstUse: 16_161 },
      unit: 'km',
      latest: { day: 20_780, reading: 98_420 },
      visits: [
        { day: 19_000, reading: 61_200, flags: new Set(['owner', 'receipt']), items: [1, 3] },
        { day: 19_214, reading: 71_000, flags: new Set(['workshop', 'receipt']), items: [1] },
        { day: 19_579, reading: 83_040, flags: new Set(['owner', 'receipt', 'photo']), items: [1, 3, 'tow bar wiring'] },
        { day: 19_699, reading: 13_040, flags: new Set(['owner', 'amended']), items: [14] },
      ],
      leftOut: 0,
      head: hex('c3a9ebc2c835fdeea2c66db3d1cb22f4'),
      next: [{ item: 1, day: 20_900, reading: 108_000 }, { item: 40, day: null, reading: 120_000 }],
      instruments: [{ day: 19_650, oldReading: 83_000, newReading: 40 }],
    });
  });
});

describe('visits', () => {
  it('add up their differences, also after a new instrument', () => {
    const { visits } = readClaims(card({ 6: '8283 19 4000 1a 0001 86a0 05 83 0a 39 ffff 00' }));
    expect(visits.map(({ day, reading }) => [day, reading])).toEqual([[16_384, 100_000], [16_394, 34_464]]);
  });

  it('carry flags, also unknown ones, and items of both kinds', () => {
    const { visits } = readClaims(card({ 6: '81 87 00 00 18 ff 01 19 ffff 62 c3 bc 00' }));
    expect([...(visits[0]?.flags ?? [])]).toEqual(['owner', 'workshop', 'receipt', 'photo', 'late', 'amended']);
    expect(visits[0]?.items).toEqual([1, 65_535, 'ü', 0]);
  });

  it('tell how many were left out', () => {
    expect(readClaims(card({ 6: '81830000 00', 7: '05' })).leftOut).toBe(4);
    expect(readClaims(card({ 6: '8183000000' })).leftOut).toBe(0);
  });
});

it('takes an absent unit for the kilometre, and knows the mile', () => {
  expect(readClaims(card({})).unit).toBe('km');
  expect(readClaims(card({ 4: '01' })).unit).toBe('mi');
});

it('ignores claims that it does not know', () => {
  expect(() => readClaims(card({ 2: '00', 11: 'f5', 500: '81f93c00' }))).not.toThrow();
  expect(() => readClaims(card({ 3: 'a201614118 63 80' }))).not.toThrow();
});

describe('refused', () => {
  it.each([1, 3, 5, 6])('without claim %i', (key) => {
    expect(() => readClaims(card({ [key]: undefined }))).toThrow(`nothing under key ${key}`);
  });

  it.each([
    ['a day of issue before 1970', { 1: '20' }],
    ['a day of issue after 2199', { 1: '1a00014826' }],
    ['a day of issue that is a float', { 1: 'f93c00' }],
    ['a day of issue that is null', { 1: 'f6' }],
    ['a car that is a list', { 3: '80' }],
    ['a car without a name', { 3: 'a0' }],
    ['a name that is a number', { 3: 'a10101' }],
    ['a name that is bytes', { 3: 'a1014141' }],
    ['an engine that stands for nothing', { 3: 'a201614103 07' }],
    ['an identification number that is null', { 3: 'a201614102f6' }],
    ['a unit that stands for nothing', { 4: '02' }],
    ['a reading without its distance', { 5: '8101' }],
    ['a reading with more than its distance', { 5: '83010203' }],
    ['a reading beyond 32 bits', { 5: '82011a80000000' }],
    ['a reading beyond 53 bits', { 5: '82011bffffffffffffffff' }],
    ['visits that are a map', { 6: 'a0' }],
    ['a visit without flags', { 6: '81820000' }],
    ['a visit before the one before it', { 6: '8283010000 83200000' }],
    ['a visit in the year 2200', { 6: '81831a000148260000' }],
    ['readings that add up beyond 32 bits', { 6: '8283001a7fffffff0083000100' }],
    ['flags below zero', { 6: '8183000020' }],
    ['an item below zero', { 6: '818400000020' }],
    ['an item beyond 32 bits', { 6: '81840000001b0000000100000000' }],
    ['an item that is a list', { 6: '818400000080' }],
    ['fewer visits in the book than on the card', { 6: '8183000000', 7: '00' }],
    ['a head of 15 bytes', { 8: `4f${'00'.repeat(15)}` }],
    ['seven lines of what comes next', { 9: `87${'8301f6f6'.repeat(7)}` }],
    ['a line of what comes next without its reading', { 9: '818201f6' }],
    ['a line of what comes next with false for null', { 9: '818301f4f6' }],
    ['a new instrument without its reading', { 10: '81820102' }],
  ])('%s', (_, change) => {
    expect(() => readClaims(card(change))).toThrow('no card');
  });
});

/** The least card with some claims changed, added or left out, as CBOR. */
function card(change: Readonly<Record<number, string | undefined>>): Uint8Array {
  const claims = Object.entries({ ...LEAST, ...change }).filter(([, value]) => value !== undefined);
  const sorted = claims.sort(([one], [other]) => Number(one) - Number(other));
  const head = (0xa0 + sorted.length).toString(16);
  return hex((head + sorted.map(([key, value]) => integer(Number(key)) + value).join('')).replace(/ /g, ''));
}

function integer(value: number): string {
  return value < 24 ? value.toString(16).padStart(2, '0') : `19${value.toString(16).padStart(4, '0')}`;
}
