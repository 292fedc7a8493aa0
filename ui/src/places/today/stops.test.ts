// What a stop on the road says to the eye and to the ear.

import { describe, expect, it } from 'vitest';
import type { ItemView, PlannedVisitView } from '../../door/types';
import type { Stop } from './lib';
import { stopSentence, stopWords } from './stops';

const today = '2026-11-25';
const own = (name: string): ItemView => ({ of: 'own', name });
const visit: PlannedVisitView = { day: '2026-12-12', site: 'home', next: true, items: [], shares: [], minutes: 30, cost: null, unpriced: 0, estimated: 0 };
const stop: Stop = {
  x: 3,
  y: 0,
  span: { from: 2, to: 4 },
  state: 'overdue',
  days: { first: '2026-11-03', last: '2026-11-03' },
  visits: [],
  items: [own('Brake fluid')],
  due: [],
  words: [],
  before: false,
};
const three = { ...stop, items: [own('Brake fluid'), own('Tyres'), own('Lamps')] };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a stop', () => {
  it('shows its day and the first thing with how many more', () => {
    expect(stopWords(stop).map(plain)).toEqual(['3 Nov 2026', 'Brake fluid']);
    expect(stopWords(three).map(plain)).toEqual(['3 Nov 2026', 'Brake fluid and 2 more']);
    expect(stopWords({ ...stop, before: true })[0]).toBe('further back');
  });

  it('is heard as one sentence that begins with what it shows', () => {
    expect(plain(stopSentence(stop, today))).toBe('3 Nov 2026, Brake fluid: overdue.');
    const together: Stop = { ...three, state: 'soon', days: { first: '2026-12-12', last: '2026-12-12' }, visits: [visit] };
    expect(plain(stopSentence(together, today))).toBe(
      '12 Dec 2026, Brake fluid and 2 more: One visit, in 17 days, for Brake fluid, Tyres and Lamps.',
    );
    expect(plain(stopSentence({ ...stop, state: 'ahead', days: { first: '2026-12-10', last: '2026-12-14' } }, today))).toBe(
      '10 Dec 2026 to 14 Dec 2026, Brake fluid: ahead, in 15 days.',
    );
  });
});
