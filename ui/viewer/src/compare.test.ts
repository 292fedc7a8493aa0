import { describe, expect, it } from 'vitest';

import { type Claims, type Flag, readClaims, type Visit } from './claims';
import { compare, type Difference } from './compare';
import type { Card } from './read';
import { claimsOf } from './test-claims';

const OLD = readClaims(claimsOf(6, new Map<number, number | never[]>([[7, 6], [10, []]])));

const visit = (day: number, reading: number, flags: Flag[] = ['owner']): Visit => ({ day, reading, flags: new Set(flags), items: [1] });

/** The same book three visits later. */
const NEW: Claims = {
  ...OLD,
  issued: OLD.issued + 400,
  latest: { day: OLD.issued + 390, reading: 170_000 },
  visits: [...OLD.visits, visit(OLD.issued + 20, 150_000), visit(OLD.issued + 200, 160_000)],
};

const card = (claims: Claims, fingerprint = 'one'): Card => ({ claims, fingerprint });

function differences(newer: Claims, older: Claims = OLD): readonly Difference[] {
  const found = compare(card(newer), card(older));
  // Whoever is pasted first, the older one is found by its day.
  expect(compare(card(older), card(newer))).toEqual(found);
  return found.differences;
}

/** The newer card with one of the older card's visits put another way. */
function withVisit(at: number, change: Partial<Visit>): Claims {
  return { ...NEW, visits: NEW.visits.map((one, index) => (index === at ? { ...one, ...change } : one)) };
}

const day = (at: number): number => (OLD.visits[at] as Visit).day;

describe('a newer card contains an older one', () => {
  it('when visits were only added after it', () => {
    expect(compare(card(NEW), card(OLD))).toEqual({ older: OLD.issued, newer: NEW.issued, sameKey: true, compared: 6, differences: [] });
    expect(compare(card(NEW, 'two'), card(OLD)).sameKey).toBe(false);
  });

  it('when it is the same card', () => {
    expect(differences(OLD)).toEqual([]);
  });

  it('when a receipt, a photo or an amendment came since', () => {
    expect(differences(withVisit(2, { flags: new Set<Flag>([...(OLD.visits[2] as Visit).flags, 'receipt', 'photo', 'amended']) }))).toEqual([]);
  });

  it('when items stand in another order', () => {
    expect(differences(withVisit(0, { items: [...(OLD.visits[0] as Visit).items].reverse() }))).toEqual([]);
  });

  it('when old visits were left out to fit, on either card', () => {
    expect(differences({ ...NEW, visits: NEW.visits.slice(3), leftOut: 3 })).toEqual([]);
    expect(differences(NEW, { ...OLD, visits: OLD.visits.slice(4), leftOut: 4 })).toEqual([]);
    expect(differences({ ...NEW, visits: [], leftOut: 8 })).toEqual([]);
  });

  it('when the odometer was replaced in between', () => {
    const instruments = [{ day: OLD.issued + 10, oldReading: 149_000, newReading: 0 }];
    expect(differences({ ...NEW, latest: { day: NEW.issued, reading: 900 }, instruments })).toEqual([]);
  });
});

describe('a difference is named by its day', () => {
  it.each<[string, Claims, Difference[]]>([
    ['another reading', withVisit(1, { reading: 1 }), [{ kind: 'changed', day: day(1), amended: false }]],
    ['other items, amended', withVisit(2, { items: [], flags: new Set<Flag>(['owner', 'late', 'amended']) }), [{ kind: 'changed', day: day(2), amended: true }]],
    ['an item more', withVisit(3, { items: [10, 16, 16] }), [{ kind: 'changed', day: day(3), amended: false }]],
    ['a number that became a text', withVisit(1, { items: ['1'] }), [{ kind: 'changed', day: day(1), amended: false }]],
    ['a receipt lost', withVisit(0, { flags: new Set<Flag>(['owner']) }), [{ kind: 'changed', day: day(0), amended: false }]],
    ['done by another', withVisit(0, { flags: new Set<Flag>(['workshop', 'receipt']) }), [{ kind: 'changed', day: day(0), amended: false }]],
    ['another day', withVisit(4, { day: day(4) + 1 }), [{ kind: 'missing', day: day(4) }, { kind: 'added', day: day(4) + 1, amended: false }]],
    ['one gone', { ...NEW, visits: NEW.visits.filter((_, at) => at !== 3) }, [{ kind: 'missing', day: day(3) }]],
    ['one added before', { ...NEW, visits: [visit(day(0) - 9, 5), ...NEW.visits] }, [{ kind: 'added', day: day(0) - 9, amended: false }]],
    ['a lower reading', { ...NEW, latest: { day: NEW.issued, reading: 148_419 } }, [{ kind: 'lower', day: OLD.latest.day }]],
    ['a book that shrank', { ...NEW, visits: NEW.visits.slice(4, 6), leftOut: 3 }, [{ kind: 'fewer' }]],
    ['another car', { ...NEW, vehicle: { ...NEW.vehicle, vin: '11111111111111111' } }, [{ kind: 'other-car' }]],
  ])('%s', (_, newer, expected) => {
    expect(differences(newer)).toEqual(expected);
  });

  it('and a hidden number belongs to any car', () => {
    expect(differences({ ...NEW, vehicle: { ...NEW.vehicle, vin: undefined } })).toEqual([]);
  });

  it('twice where two of one day are gone', () => {
    const twice = { ...OLD, visits: [...OLD.visits, OLD.visits[5] as Visit] };
    expect(differences({ ...NEW, leftOut: 0 }, twice).map(({ kind }) => kind)).toEqual(['missing']);
  });
});
