// When a thing is due, in words, and the one sentence that says why.

import { describe, expect, it } from 'vitest';
import type { DueView, PlannedVisitView, WhyView } from '../../door/types';
import { chosenDay, groupDue, hasNoPlace, keyOf, mayFallText, movedText, whenText, whyText } from './due';

const why: WhyView = {
  interval: { distance: { count: 10_000, unit: 'km' }, months: '12' },
  source: 'common-practice',
  source_name: '',
  phase: 'every',
  from: { from: 'done', day: '2025-11-03', reading: { count: 86_000, unit: 'km' }, visit: 'v' },
  tightened_by: ['short-trips', 'towing'],
  goes_with: null,
  kind: null,
  seen: null,
};
const due: DueView = {
  item: { of: 'catalogue', number: 1, key: 'engine-oil' },
  state: 'ahead',
  day: '2026-11-03',
  between: null,
  reading: { count: 96_000, unit: 'km' },
  first: 'time',
  why,
  workshop: false,
  weight: 5,
  round: false,
};
const said = (view: WhyView, between: DueView['between'] = null) => plain(whyText({ why: view, between }, 'km'));
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('why', () => {
  it('names the interval, whose it is, what tightened it, what it is counted from', () => {
    expect(said(why)).toBe(
      'Every 10 000 km or 12 months, whichever comes first, by common practice, ' +
        'shortened for short trips and towing; last done on 3 Nov 2025 at 86 000 km.',
    );
  });

  it('names what it goes with', () => {
    const oil = { of: 'own' as const, name: 'Sump oil' };
    expect(said({ ...why, tightened_by: [], goes_with: oil })).toContain('by common practice, as often as Sump oil; last done');
  });

  it('names the handbook, a regulation or a source, and the first time of a new car', () => {
    const from = { from: 'first-use' as const, day: '2019-04-01' };
    const first = said({ ...why, source: 'published', source_name: 'the maker', phase: 'first', from, tightened_by: [] });
    expect(first).toBe(
      'The first time after 10 000 km or 12 months, whichever comes first, as published by the maker; counted from first use on 1 Apr 2019.',
    );
    expect(said({ ...why, source: 'handbook' })).toContain('as your handbook says');
    expect(said({ ...why, source: 'regulation', source_name: 'the type approval' })).toContain('as the type approval demands');
  });

  it('makes up no day where there is no record', () => {
    expect(said({ ...why, from: null })).toMatch(/nobody recorded when it was last done\.$/);
  });

  it('names the kind that is fitted and what calls for the work', () => {
    const item = { of: 'own' as const, name: 'Wheel change' };
    const after = said({ ...why, phase: 'after', kind: 'iridium', from: { from: 'other', item, day: '2026-11-20' }, tightened_by: [] });
    expect(after).toMatch(/^Iridium plugs: once, within 10 000 km or 12 months.*, by common practice; counted from Wheel change on 20 Nov 2026\.$/);
    expect(said({ ...why, kind: 'iridium' })).toMatch(/^Iridium plugs: every 10 000 km or 12 months, whichever comes first, by common practice/);
  });

  it('says every month, and a distance in the unit of the car as well', () => {
    const monthly = { distance: null, months: '1' };
    expect(said({ ...why, interval: monthly })).toMatch(/^Every month, by common practice/);
    expect(said({ ...why, interval: monthly, phase: 'first' })).toMatch(/^The first time after 1 month,/);
    expect(said({ ...why, interval: { distance: { count: 6_000, unit: 'mi' }, months: null } })).toMatch(/^Every 6 000 mi \(about 9 700 km\), by/);
  });

  it('names what was found, and between which days it may fall', () => {
    const value = { what: 'tread', value: '3.1', limit: '3.0', unit: 'mm' };
    const seen = { day: '2026-11-20', finding: 'within-limits', value, effect: 'extrapolated', undecided: [] };
    expect(said({ ...why, seen }, { early: '2027-01-02', late: '2027-03-04' })).toMatch(
      /; on 20 Nov 2026 found within limits \(Tread depth 3\.1 mm\), and at that rate the limit of 3\.0 mm comes then; most likely between 2 Jan 2027 and 4 Mar 2027\.$/,
    );
    expect(said({ ...why, seen: { ...seen, finding: 'worn', value: null, effect: 'now' } })).toContain('found worn, so that it is due now');
    const undecided = [due.item, { of: 'own' as const, name: 'Bench seat' }];
    expect(said({ ...why, seen: { ...seen, finding: 'worn', value: null, effect: 'now', undecided } })).toMatch(
      /due now; which of these it means is not said, so write the finding there: Engine oil and filter \/ Bench seat\.$/,
    );
  });

  it('leaves out a reading that nobody wrote down', () => {
    expect(said({ ...why, from: { from: 'done', day: '2025-11-03', reading: null, visit: 'v' } })).toMatch(/done on 3 Nov 2025\.$/);
  });
});

describe('when', () => {
  const when = (rest: Partial<DueView>, paced = true) => plain(whenText({ ...due, ...rest }, paced));

  it('names first what comes first', () => {
    expect(when({ first: 'distance' })).toBe('at 96 000 km, about 3 Nov 2026');
    expect(when({ reading: null })).toBe('by 3 Nov 2026');
    expect(when({ day: null })).toBe('at 96 000 km');
  });

  it('names a reading beside the day only where it may come sooner', () => {
    const both = 'by 3 Nov 2026, or at 96 000 km if that comes sooner';
    expect(when({ between: { early: '2026-09-20', late: '2026-11-03' } })).toBe(both);
    expect(when({ between: { early: '2026-11-03', late: '2026-11-03' } })).toBe('by 3 Nov 2026');
    expect(when({ first: 'finding', between: { early: '2026-09-20', late: '2026-11-03' } })).toBe('by 3 Nov 2026');
    expect(when({ between: { early: '2026-11-03', late: '2026-11-03' } }, false)).toBe(both);
    expect(when({ reading: null }, false)).toBe('by 3 Nov 2026');
  });

  it('says since what an overdue item is overdue', () => {
    expect(when({ state: 'overdue' })).toBe('since 3 Nov 2026');
    expect(when({ state: 'overdue', first: 'distance' })).toBe('since 96 000 km');
  });

  it('does not say again that something is due today', () => {
    expect(when({ state: 'due' })).toBe('');
    expect(when({ state: 'due', first: 'distance' })).toBe('at 96 000 km');
  });

  it('says nothing where there is no record', () => {
    expect(when({ state: 'no-record', day: null, reading: null, first: null })).toBe('');
    expect(mayFallText({ ...due, day: null })).toBe('');
  });

  it('spans the days on which it may fall', () => {
    expect(plain(mayFallText(due))).toBe('3 Nov 2026');
    expect(plain(mayFallText({ ...due, between: { early: '2026-10-01', late: '2026-12-24' } }))).toBe('1 Oct 2026 to 24 Dec 2026');
  });
});

describe('another day', () => {
  const moved = { item: due.item, day: '2026-12-24', percent: 20, extra: null, late: false, weight: 3 };

  it('costs nothing, money, or a share of a usual job', () => {
    expect(movedText({ ...moved, percent: 0 }, '2026-11-03')).toBe('That costs nothing more.');
    expect(movedText(moved, '2026-11-03')).toBe('That adds about 20 % of what a usual job on this car costs.');
    expect(plain(movedText({ ...moved, extra: { number: '12.00', currency: 'EUR' } }, '2026-11-03'))).toBe('That adds about 12.00 EUR.');
  });

  it('is late behind the day on which the job falls due', () => {
    expect(plain(movedText({ ...moved, late: true }, '2026-11-03'))).toMatch(/It is late then: it falls due on 3 Nov 2026\.$/);
    expect(plain(movedText({ ...moved, late: true, weight: 6 }, '2026-11-03'))).toMatch(/dear or dangerous\.$/);
  });
});

describe('the lists', () => {
  const round = { ...due, state: 'overdue' as const, round: true };
  const unknown = (weight: number): DueView => ({ ...due, state: 'no-record', day: null, weight });

  it('hold every line once', () => {
    const all = [{ ...due, state: 'overdue' as const }, due, round, unknown(6), unknown(2)];
    const groups = groupDue(all, []);
    expect(Object.values(groups).flat()).toHaveLength(all.length);
    expect(groups.round).toEqual([round]);
    expect(groups.pressing.map(({ state, weight }) => [state, weight])).toEqual([['overdue', 5], ['no-record', 6]]);
  });

  it('ask for a few grave things at once and fold the others', () => {
    const groups = groupDue(Array.from({ length: 20 }, () => unknown(6)), []);
    expect(groups.pressing.length).toBeLessThan(6);
    expect(groups.pressing.length + groups.unrecorded.length).toBe(20);
  });

  const visit = (pinned: boolean, next: boolean): PlannedVisitView => {
    const items = [{ item: due.item, due: '2026-11-03', pinned, next, look: false, guide: null }];
    return { day: '2026-12-12', site: 'home', next: true, items, shares: [], minutes: 30, cost: null, unpriced: 1, estimated: 0 };
  };

  it('hold what nobody recorded as ahead once a day was chosen for it', () => {
    const groups = groupDue([unknown(6)], [visit(true, true)]);
    expect(groups).toEqual({ pressing: [], round: [], ahead: [unknown(6)], unrecorded: [] });
    expect(hasNoPlace(unknown(6), [visit(true, true)])).toBe(false);
    expect(hasNoPlace(unknown(6), [visit(true, false)])).toBe(true);
    expect(hasNoPlace(due, [])).toBe(false);
  });

  it('name the day that was chosen, and no day that the plan proposes', () => {
    expect(chosenDay(due.item, [visit(true, true)])).toBe('2026-12-12');
    expect(chosenDay(due.item, [visit(false, true), visit(true, false)])).toBeUndefined();
    expect(chosenDay({ of: 'own', name: 'Roof rail' }, [visit(true, true)])).toBeUndefined();
  });
});

it('keeps the row of an item by the item, and further times of it by their place', () => {
  const row = { item: due.item, due: '2026-11-03', pinned: false, next: true, look: false, guide: null };
  expect(keyOf(row, 0)).toBe(keyOf(row, 3));
  expect(keyOf({ ...row, next: false }, 0)).not.toBe(keyOf({ ...row, next: false }, 1));
});
