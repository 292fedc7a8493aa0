// The pad, the places it shows, and the draft.

import { describe, expect, it } from 'vitest';
import type { PumpView } from '../../door/types';
import { nothingRead } from '../../parts/from-paper';
import { digitsOf, endedBy, erase, freshDraft, groupBefore, isStray, isUntouched, paperDraft, readingForm, shown, startDraft, strokeOf, tap, worthKeeping } from './lib';

const view: PumpView = {
  vehicle: { book: 'b', name: 'Heron', make_model: '', engine: 'petrol', unit: 'km', reading: null, handed_over: null },
  today: '2026-11-25',
  leading: '98',
  digits: 5,
  last: [],
  fuels: [
    { kind: 'petrol', unit: 'litre', units: ['litre', 'us-gallon', 'imperial-gallon'], currency: 'EUR', price: '1.689', amounts: [] },
    { kind: 'electric', unit: 'kilowatt-hour', units: ['kilowatt-hour'], currency: 'EUR', price: '', amounts: [] },
  ],
  used: [],
  undo: null,
  watch: null,
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

describe('a key of the keyboard', () => {
  it('types onto the pad wherever the focus is, unless a field takes it', () => {
    expect(['page', 'key', 'field'].map((focus) => strokeOf('7', focus as 'page'))).toEqual(['digit', 'digit', undefined]);
    expect(strokeOf('Backspace', 'key')).toBe('erase');
    expect(strokeOf('Backspace', 'field')).toBeUndefined();
  });

  it('saves with Enter, unless Enter presses the key that has the focus', () => {
    expect(['page', 'key', 'field'].map((focus) => strokeOf('Enter', focus as 'page'))).toEqual(['save', undefined, undefined]);
  });

  it('does nothing with letters', () => {
    expect(strokeOf('a', 'page')).toBeUndefined();
  });
});

describe('the full tank that a fill ended', () => {
  const fuel = { kind: 'petrol', amount: '41.300', unit: 'litre', price: null, price_follows: null, total: null, fill: 'full' };
  const line = { subject: 's', day: '2026-11-25', reading: { count: 98420, unit: 'km' as const }, status: 'actual', fuel };
  const used = [{ kind: 'petrol', to: '2026-11-25', used: { number: '6.4', hundredths: 640 }, unit: 'litres-per-100-km' }];

  it('is that of its day and kind', () => {
    expect(endedBy(line, used)).toBe(used[0]);
    expect(endedBy({ ...line, day: '2026-11-26' }, used)).toBeUndefined();
    expect(endedBy({ ...line, fuel: { ...fuel, kind: 'electric' } }, used)).toBeUndefined();
  });

  it('is none after a part fill, a missed one, or without fuel', () => {
    expect(endedBy({ ...line, fuel: { ...fuel, fill: 'part' } }, used)).toBeUndefined();
    expect(endedBy({ ...line, fuel: { ...fuel, fill: 'missed' } }, used)).toBeUndefined();
    expect(endedBy({ ...line, fuel: null }, used)).toBeUndefined();
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
    const kept = { ...freshDraft(view), fuel: { ...freshDraft(view).fuel, amount: '41,3' } };
    expect(startDraft(view, kept).fuel.amount).toBe('41,3');
    expect(worthKeeping(kept, view)).toBe(true);
  });

  it('takes over only what a form has today of one that an older version kept', () => {
    const old = { digits: '98420', fuelled: true, fuel: { volume: '41', volume_unit: 'litre', total: '69.76', currency: 'CHF', fill: 'part' } };
    const { fuel } = startDraft(view, old as never);
    expect(fuel).toEqual({ kind: 'petrol', amount: '', unit: 'litre', price: '', total: '69.76', currency: 'CHF', fill: 'part' });
    expect(startDraft(view, { digits: '98420', fuel: null } as never).digits).toBe('98420');
    expect(startDraft(view, {})).toEqual(freshDraft(view));
  });

  it('sends fuel only when the section is open and holds something', () => {
    const draft = { ...freshDraft(view), digits: '98420' };
    expect(readingForm({ ...draft, fuelled: true })).toEqual({ day: '', reading: '98420', status: '', papers: [] });
    const fuel = { ...draft.fuel, amount: '41.3' };
    expect(readingForm({ ...draft, fuelled: false, fuel }).fuel).toBeUndefined();
    expect(readingForm({ ...draft, fuelled: true, fuel }).fuel).toEqual(fuel);
  });
});

describe('a fill that a paper tells of', () => {
  const from = { ...nothingRead('p'), day: '2026-11-20', volume: '41.30', volumeUnit: 'litre', price: '1.689', cost: '69.76', currency: 'CHF' };

  it('has its day, its figures and the paper, and no digits that nobody read', () => {
    const draft = paperDraft(view, from);
    expect(draft).toMatchObject({ digits: '', fuelled: true, day: '2026-11-20', papers: ['p'] });
    expect(readingForm({ ...draft, digits: '98420' })).toMatchObject({ day: '2026-11-20', papers: ['p'], fuel: { kind: 'petrol', amount: '41.30', price: '1.689', total: '69.76', currency: 'CHF' } });
  });

  it('has the reading that is printed, or the leading digits of today', () => {
    expect(paperDraft(view, { ...from, reading: '98420' }).digits).toBe('98420');
    expect(paperDraft(view, { ...from, day: view.today }).digits).toBe('98');
  });

  it('goes on with the digits that were typed before it was read, unless it is of another day or says its own', () => {
    const old = { ...freshDraft(view), digits: '9842', papers: ['p'] };
    expect(paperDraft(view, { ...from, day: view.today }, old).digits).toBe('9842');
    expect(paperDraft(view, { ...from, day: '' }, old).digits).toBe('9842');
    expect(paperDraft(view, from, old).digits).toBe('');
    expect(paperDraft(view, { ...from, day: view.today, reading: '98431' }, old).digits).toBe('98431');
  });

  it('is kept, and comes back', () => {
    const draft = paperDraft(view, from);
    expect(worthKeeping(draft, view)).toBe(true);
    expect(startDraft(view, draft)).toMatchObject({ day: '2026-11-20', papers: ['p'] });
  });
});
