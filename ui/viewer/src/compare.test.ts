import { describe, expect, it } from 'vitest';

import { type Claims, type Flag, readClaims, type Visit } from './claims';
import { compare, type Comparison, type Difference } from './compare';
import type { Card } from './read';
import { claimsOf } from './test-claims';

/** A book of six visits and one new instrument. */
const OLD = readClaims(claimsOf(6, new Map([[7, 6]])));

const visit = (day: number, reading: number, flags: Flag[] = ['owner']): Visit => ({ day, reading, flags: new Set(flags), items: [1] });

/** The same book two visits later. */
const NEW: Claims = {
  ...OLD,
  issued: OLD.issued + 400,
  latest: { day: OLD.issued + 390, reading: 170_000 },
  visits: [...OLD.visits, visit(OLD.issued + 20, 150_000), visit(OLD.issued + 200, 160_000)],
};

const card = (claims: Claims, fingerprint = 'one'): Card => ({ claims, fingerprint });
const day = (at: number): number => (OLD.visits[at] as Visit).day;

function compared(newer: Claims, older: Claims = OLD): Comparison {
  const found = compare(card(newer), card(older));
  // Whoever is pasted first, the older one is found by its day.
  expect(compare(card(older), card(newer))).toEqual(found);
  expect(found.contained).toBe(found.differences.every(({ kind }) => kind === 'added'));
  return found;
}

/** The newer card with one of the older card's visits put another way. */
function withVisit(at: number, change: Partial<Visit>): Claims {
  return { ...NEW, visits: NEW.visits.map((one, index) => (index === at ? { ...one, ...change } : one)) };
}

describe('a newer card contains an older one', () => {
  it('when visits were only added after it', () => {
    const found = { older: OLD.issued, newer: NEW.issued, sameKey: true, carKnown: true, same: 6, contained: true, differences: [] };
    expect(compare(card(NEW), card(OLD))).toEqual(found);
    expect(compare(card(NEW, 'two'), card(OLD)).sameKey).toBe(false);
  });

  it.each<[string, Claims, number]>([
    ['it is the same card', OLD, 6],
    ['a receipt, a photo and an amendment came since', withVisit(2, { flags: new Set<Flag>(['owner', 'late', 'receipt', 'photo', 'amended']) }), 6],
    ['items stand in another order', withVisit(0, { items: [...(OLD.visits[0] as Visit).items].reverse() }), 6],
    ['the car has another name', { ...NEW, vehicle: { ...NEW.vehicle, name: 'Someone else\'s wagon' } }, 6],
    ['the number is hidden', { ...NEW, vehicle: { ...NEW.vehicle, vin: undefined, firstUse: undefined } }, 6],
    ['old visits were left out to fit', { ...NEW, visits: NEW.visits.slice(3), leftOut: 3 }, 3],
    ['all were', { ...NEW, visits: [], leftOut: 8 }, 0],
    ['the odometer was replaced since', { ...NEW, latest: { day: NEW.issued, reading: 900 }, instruments: [...NEW.instruments, { day: OLD.issued + 10, oldReading: 149_000, newReading: 0 }] }, 6],
    ['it is in miles', inMiles(NEW), 6],
  ])('when %s', (_, newer, same) => {
    const found = compared(newer);
    expect(found.differences).toEqual([]);
    expect(found.same).toBe(same);
  });

  it('when the older one left out some that the newer one has', () => {
    expect(compared(NEW, { ...OLD, visits: OLD.visits.slice(4), leftOut: 4 }).differences).toEqual([]);
  });

  it('when the one of the first day that it has may be left out, and another one of that day was not', () => {
    const found = compared({ ...NEW, visits: [visit(day(3), 1), ...NEW.visits.slice(4)], leftOut: 3 });
    expect(found).toMatchObject({ same: 2, contained: true, differences: [{ kind: 'added', day: day(3) }] });
  });

  it('and one written down afterwards is named all the same', () => {
    const found = compared({ ...NEW, visits: [visit(day(0) - 9, 5), ...NEW.visits] });
    expect(found.contained).toBe(true);
    expect(found.differences).toEqual([{ kind: 'added', day: day(0) - 9 }]);
  });

  it('but it is told where no number says that it is the same car', () => {
    expect(compared({ ...NEW, vehicle: { ...NEW.vehicle, vin: undefined } }).carKnown).toBe(false);
  });
});

describe('a difference is named by its day', () => {
  it.each<[string, Claims, Difference[]]>([
    ['another car', { ...NEW, vehicle: { ...NEW.vehicle, vin: '11111111111111111' } }, [{ kind: 'other-car' }]],
    ['another day of first use', { ...NEW, vehicle: { ...NEW.vehicle, firstUse: 16_162 } }, [{ kind: 'first-use' }]],
    ['a lower reading', { ...NEW, latest: { day: NEW.issued, reading: 148_419 } }, [{ kind: 'latest' }]],
    ['a reading of an earlier day', { ...NEW, latest: { day: OLD.latest.day - 1, reading: 170_000 } }, [{ kind: 'latest' }]],
    ['a lower reading in miles', { ...NEW, unit: 'mi', visits: [], leftOut: 9, instruments: [], latest: { day: NEW.issued, reading: 92_222 } }, [{ kind: 'latest' }, { kind: 'instrument', day: 19_650 }]],
    ['an instrument that went', { ...NEW, instruments: [] }, [{ kind: 'instrument', day: 19_650 }]],
    ['an instrument that read otherwise', { ...NEW, instruments: [{ day: 19_650, oldReading: 118_000, newReading: 0 }] }, [{ kind: 'instrument', day: 19_650 }]],
    ['a book that shrank', { ...NEW, visits: NEW.visits.slice(4, 6), leftOut: 3 }, [{ kind: 'fewer' }]],
    ['another reading', withVisit(1, { reading: 1 }), [{ kind: 'changed', day: day(1), amended: false }]],
    ['other items, amended', withVisit(2, { items: [], flags: new Set<Flag>(['owner', 'amended']) }), [{ kind: 'changed', day: day(2), amended: true }]],
    ['an item more', withVisit(3, { items: [10, 16, 16] }), [{ kind: 'changed', day: day(3), amended: false }]],
    ['a number that became a text', withVisit(1, { items: ['1'] }), [{ kind: 'changed', day: day(1), amended: false }]],
    ['done by another', withVisit(0, { flags: new Set<Flag>(['workshop', 'receipt']) }), [{ kind: 'changed', day: day(0), amended: false }]],
    ['another day', withVisit(4, { day: day(4) + 1 }), [{ kind: 'missing', day: day(4) }, { kind: 'added', day: day(4) + 1 }]],
    ['one gone', { ...NEW, visits: NEW.visits.filter((_, at) => at !== 3) }, [{ kind: 'missing', day: day(3) }]],
  ])('%s', (_, newer, expected) => {
    expect(compared(newer).differences).toEqual(expected);
  });

  it('once where one of two of a day is gone', () => {
    const twice = { ...OLD, visits: [...OLD.visits, OLD.visits[5] as Visit] };
    expect(compared(NEW, twice).differences).toEqual([{ kind: 'missing', day: day(5) }]);
  });
});

/** The same distances in whole miles (1 mi = 1.609344 km). */
function inMiles(claims: Claims): Claims {
  const miles = (kilometres: number): number => Math.floor((kilometres * 1_000_000) / 1_609_344);
  return {
    ...claims,
    unit: 'mi',
    latest: { ...claims.latest, reading: miles(claims.latest.reading) },
    visits: claims.visits.map((one) => ({ ...one, reading: miles(one.reading) })),
    instruments: claims.instruments.map((one) => ({ ...one, oldReading: miles(one.oldReading), newReading: miles(one.newReading) })),
  };
}
