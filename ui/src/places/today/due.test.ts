// When a thing is due, in words, and the one sentence that says why.

import { describe, expect, it } from 'vitest';
import type { DueView, WhyView } from '../../door/types';
import { fallsText, whenText, whyText } from './due';

const why: WhyView = {
  interval: { distance: { count: 10_000, unit: 'km' }, months: '12' },
  source: 'common-practice',
  source_name: '',
  first_phase: false,
  from: { from: 'done', day: '2025-11-03', reading: { count: 86_000, unit: 'km' }, visit: 'v' },
  tightened_by: ['short-trips', 'towing'],
};
const due: DueView = {
  item: { of: 'catalogue', number: 1, key: 'engine-oil' },
  state: 'ahead',
  day: '2026-11-03',
  reading: { count: 96_000, unit: 'km' },
  first: 'time',
  why,
  workshop: false,
  weight: 5,
};
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('why', () => {
  it('names the interval, whose it is, what tightened it, what it is counted from', () => {
    expect(plain(whyText(why))).toBe(
      'Every 10 000 km or 12 months, whichever comes first, by common practice, ' +
        'shortened for short trips and towing; last done on 3 Nov 2025 at 86 000 km.',
    );
  });

  it('names the handbook, a regulation or a source, and the first time of a new car', () => {
    const from = { from: 'first-use' as const, day: '2019-04-01' };
    const first = whyText({ ...why, source: 'published', source_name: 'the maker', first_phase: true, from, tightened_by: [] });
    expect(plain(first)).toBe(
      'The first time after 10 000 km or 12 months, whichever comes first, as published by the maker; counted from first use on 1 Apr 2019.',
    );
    expect(whyText({ ...why, source: 'handbook' })).toContain('as your handbook says');
    expect(whyText({ ...why, source: 'regulation', source_name: 'the type approval' })).toContain('as the type approval demands');
  });

  it('makes up no day where there is no record', () => {
    expect(whyText({ ...why, from: null })).toMatch(/nobody recorded when it was last done\.$/);
  });

  it('leaves out a reading that nobody wrote down', () => {
    expect(plain(whyText({ ...why, from: { from: 'done', day: '2025-11-03', reading: null, visit: 'v' } }))).toMatch(/done on 3 Nov 2025\.$/);
  });
});

describe('when', () => {
  it('names first what comes first', () => {
    expect(plain(whenText(due))).toBe('by 3 Nov 2026, or at 96 000 km if that comes sooner');
    expect(plain(whenText({ ...due, first: 'distance' }))).toBe('at 96 000 km, about 3 Nov 2026');
    expect(plain(whenText({ ...due, reading: null }))).toBe('by 3 Nov 2026');
    expect(plain(whenText({ ...due, day: null }))).toBe('at 96 000 km');
  });

  it('says since what an overdue item is overdue', () => {
    expect(plain(whenText({ ...due, state: 'overdue' }))).toBe('since 3 Nov 2026');
    expect(plain(whenText({ ...due, state: 'overdue', first: 'distance' }))).toBe('since 96 000 km');
  });

  it('does not say again that something is due today', () => {
    expect(whenText({ ...due, state: 'due' })).toBe('');
    expect(plain(whenText({ ...due, state: 'due', first: 'distance' }))).toBe('at 96 000 km');
  });

  it('says nothing where there is no record', () => {
    expect(whenText({ ...due, state: 'no-record', day: null, reading: null, first: null })).toBe('');
    expect(fallsText([{ ...due, day: null }])).toBe('');
  });

  it('spans the days of what hangs together', () => {
    expect(plain(fallsText([{ ...due, day: '2026-12-14' }, { ...due, day: '2026-12-10' }]))).toBe('10 Dec 2026 to 14 Dec 2026');
  });
});
