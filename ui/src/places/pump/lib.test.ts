// The pad, the places it shows, and the draft.

import { describe, expect, it } from 'vitest';
import type { PumpView } from '../../door/types';
import { nothingRead } from '../../parts/from-paper';
import { digitsOf, erase, freshDraft, groupBefore, isStray, isUntouched, paperDraft, readingForm, shown, startDraft, tap, worthKeeping } from './lib';

const view: PumpView = {
  vehicle: { book: 'b', name: 'Heron', make_model: '', engine: 'petrol', unit: 'km', reading: null },
  today: '2026-11-25',
  leading: '98',
  digits: 5,
  last: [],
  currency: 'EUR',
  volume_unit: 'litre',
};

describe('the pad', () => {
  it('adds behind the leading digits and erases from the end', () => {
    expect(tap(tap('98', '4'), '2')).toBe('9842');
    expect(erase('9842')).toBe('984');
    expect(erase('')).toBe('');
  });

  it('takes no eighth digit', () => {
    expect(tap('1234567', '8')).toBe('1234567');
  });

  it('reads the digits out of what was pasted', () => {
    expect(digitsOf('98\u00a0420 km')).toBe('98420');
  });
});

describe('what was typed', () => {
  it('is a reading with its groups and its unit', () => {
    for (const text of ['', '98420', '98\u00a0420 km', '98,420', '98.420 mi', "1'098'420", ' 98 420 ']) expect(isStray(text), text).toBe(false);
  });

  it('is no reading with letters, a sign or tenths', () => {
    for (const text of ['abc', '98a', '-98', '98420.5', '98,42']) expect(isStray(text), text).toBe(true);
  });

  it('adds nothing while only digits stand there that were given', () => {
    expect(isUntouched(freshDraft(view), view)).toBe(true);
    expect(isUntouched({ ...freshDraft(view), digits: '' }, view)).toBe(true);
    expect(isUntouched({ ...freshDraft(view), digits: '984' }, view)).toBe(false);
  });
});

describe('what is shown', () => {
  it('tells the given digits from the typed ones and counts the empty places', () => {
    expect(shown('984', '98', 5)).toEqual({ given: '98', typed: '4', empty: 2 });
  });

  it('no longer calls a digit given that was typed over', () => {
    expect(shown('991', '98', 5)).toEqual({ given: '9', typed: '91', empty: 2 });
  });

  it('shows no empty place when there are more digits than expected', () => {
    expect(shown('100001', '99', 5).empty).toBe(0);
  });

  it('groups from the right', () => {
    const starts = (places: number) => Array.from({ length: places }, (_, i) => i).filter((i) => groupBefore(i, places));
    expect(starts(5)).toEqual([2]);
    expect(starts(7)).toEqual([1, 4]);
  });
});

describe('the draft', () => {
  it('comes back when digits were typed', () => {
    const kept = { ...freshDraft(view), digits: '9842' };
    expect(startDraft(view, kept).digits).toBe('9842');
  });

  it('gives way to the new leading digits when nothing was typed', () => {
    const kept = { ...freshDraft(view), digits: '97' };
    expect(startDraft(view, kept).digits).toBe('98');
  });

  it('comes back for the sake of the fuel alone', () => {
    const kept = { ...freshDraft(view), fuel: { ...freshDraft(view).fuel, volume: '41,3' } };
    expect(startDraft(view, kept).fuel.volume).toBe('41,3');
    expect(worthKeeping(kept, view)).toBe(true);
  });

  it('sends fuel only when the section is open and holds something', () => {
    const draft = { ...freshDraft(view), digits: '98420' };
    expect(readingForm({ ...draft, fuelled: true })).toEqual({ day: '', reading: '98420', status: '', papers: [] });
    const fuel = { ...draft.fuel, volume: '41.3' };
    expect(readingForm({ ...draft, fuelled: false, fuel }).fuel).toBeUndefined();
    expect(readingForm({ ...draft, fuelled: true, fuel }).fuel).toEqual(fuel);
  });
});

describe('a fill that a paper tells of', () => {
  const from = { ...nothingRead('p'), day: '2026-11-20', volume: '41.30', volumeUnit: 'litre', cost: '69.76', currency: 'CHF' };

  it('has its day, its figures and the paper, and no digits that nobody read', () => {
    const draft = paperDraft(view, from);
    expect(draft).toMatchObject({ digits: '', fuelled: true, day: '2026-11-20', papers: ['p'] });
    expect(readingForm({ ...draft, digits: '98420' })).toMatchObject({ day: '2026-11-20', papers: ['p'], fuel: { volume: '41.30', total: '69.76', currency: 'CHF' } });
  });

  it('has the reading that is printed, or the leading digits of today', () => {
    expect(paperDraft(view, { ...from, reading: '98420' }).digits).toBe('98420');
    expect(paperDraft(view, { ...from, day: view.today }).digits).toBe('98');
  });

  it('is kept, and comes back', () => {
    const draft = paperDraft(view, from);
    expect(worthKeeping(draft, view)).toBe(true);
    expect(startDraft(view, draft)).toMatchObject({ day: '2026-11-20', papers: ['p'] });
  });
});
