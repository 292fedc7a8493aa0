// Lines of the book in words, the filter, and the way back into a form.

import { describe, expect, it } from 'vitest';
import type { BookLine, LineContent, TroubleForm } from '../../door/types';
import {
  canAmend,
  canStrike,
  canThrowAway,
  costText,
  itemOptions,
  lineFilter,
  NO_FILTER,
  papersIn,
  readingOf,
  saysText,
  struckText,
} from './lib';

const fuelled: LineContent = {
  kind: 'reading',
  status: 'actual',
  fuel: { kind: 'petrol', amount: '41.300', unit: 'litre', price: null, price_follows: { number: '1.690', currency: 'EUR' }, total: { number: '69.80', currency: 'EUR' }, fill: 'full' },
  papers: [{ subject: 'p', hash: 'h', width: 1, height: 1, filed: '2026-10-12', whole: null, page: null }],
};
const line = (says: LineContent, struck: string | null = null): BookLine => ({
  subject: 's',
  day: '2026-10-12',
  reading: { count: 96_300, unit: 'km' },
  says,
  written: '2026-10-12',
  amended: 0,
  struck,
});

describe('the filter', () => {
  it('leaves out what is not asked for', () => {
    expect(lineFilter(NO_FILTER)).toEqual({});
    expect(lineFilter({ year: '2024', item: '1', text: '  oil ' })).toEqual({ year: 2024, item: 1, text: 'oil' });
  });

  it('offers catalogue items by name', () => {
    const options = itemOptions([
      { of: 'catalogue', number: 18, key: 'wipers' },
      { of: 'own', name: 'Roof rail' },
      { of: 'catalogue', number: 10, key: 'brake-fluid' },
    ]);
    expect(options.map(({ value }) => value)).toEqual(['10', '18']);
  });
});

describe('a line', () => {
  it('says what it holds, for every kind', () => {
    const km = (count: number) => ({ count, unit: 'km' as const });
    const item = { of: 'own' as const, name: 'Roof rail' };
    const part = { name: '', maker: 'Quarrel', number: 'QF 20-118', quantity: '1', measure: 'piece', price: null, served: null, kind: '' };
    const note = { number: 'QF 20-118', maker: 'Quarrel', same: [], mark: '', instead: '', note: '' };
    const kinds: LineContent[] = [
      fuelled,
      { kind: 'reading', status: 'actual', fuel: null, papers: [] },
      { kind: 'instrument', old: km(88_000), new: km(0) },
      { kind: 'visit', workshop: '', items: [item], parts: [], cost: null, note: '', papers: [], found: [] },
      { kind: 'visit', workshop: '', items: [], parts: [], cost: null, note: '', papers: [], found: [{ item, finding: 'worn', value: null }] },
      { kind: 'plan', item, to: 'day', day: '2026-12-12', then: null, first: null },
      { kind: 'plan', item, to: 'any-day', day: null, then: null, first: null },
      { kind: 'plan', item, to: 'off', day: null, then: null, first: null },
      { kind: 'plan', item, to: 'handbook', day: null, then: { distance: km(15_000), months: '12' }, first: null },
      { kind: 'plan', item, to: 'catalogue', day: null, then: null, first: null },
      { kind: 'bought', shop: '', parts: [part], cost: null, note: '', papers: [] },
      { kind: 'part-note', note },
      { kind: 'part-note', note: { ...note, mark: 'wrong' } },
      { kind: 'part-note', note: { ...note, mark: 'superseded', instead: 'QF 20-119' } },
      { kind: 'part-note', note: { ...note, same: [{ maker: 'Merle', number: 'M 7' }] } },
      { kind: 'newer' },
    ];
    const said = kinds.map((says) => saysText(says, 'km'));
    expect(new Set(said).size).toBe(kinds.length);
    expect(said.every((text) => text.length > 0)).toBe(true);
    const monthly = { kind: 'plan' as const, item, to: 'handbook', day: null, then: { distance: null, months: '1' }, first: null };
    expect(saysText(monthly, 'km')).toBe('Roof rail: every month, as you set it');
  });

  it('counts papers and names the cost', () => {
    expect(costText(fuelled)).toBe('69.80\u00a0EUR');
    expect(costText({ kind: 'newer' })).toBe('');
    expect(papersIn({ kind: 'paper', paper: { subject: 'p', hash: 'h', width: 1, height: 1, filed: '', whole: null, page: null } })).toBe(1);
    expect(papersIn(fuelled)).toBe(1);
  });

  it('comes back into a form as it was read', () => {
    expect(readingOf(line(fuelled))).toMatchObject({ day: '2026-10-12', reading: '96300', papers: ['p'], fuel: { kind: 'petrol', amount: '41.300', price: '', total: '69.80', currency: 'EUR' } });
    expect(readingOf(line({ kind: 'newer' }))).toBeUndefined();
  });

  it('that was struck out can neither be amended nor struck out again', () => {
    expect(canAmend(line(fuelled))).toBe(true);
    expect(canAmend(line(fuelled, 'a slip'))).toBe(false);
    expect(canAmend(line({ kind: 'bought', shop: '', parts: [], cost: null, note: '', papers: [] }))).toBe(true);
    expect(canAmend(line({ kind: 'newer' }))).toBe(false);
    expect(canStrike(line(fuelled, ''))).toBe(false);
    expect(canStrike(line({ kind: 'newer' }))).toBe(false);
  });

  it('throws papers away, and only papers, instead of striking them out', () => {
    const paper: LineContent = { kind: 'paper', paper: { subject: 's', hash: 'h', width: 1, height: 1, filed: '2026-10-12', whole: null, page: null } };
    expect([canStrike(line(paper)), canThrowAway(line(paper))]).toEqual([false, true]);
    expect([canStrike(line(fuelled)), canThrowAway(line(fuelled))]).toEqual([true, false]);
    expect(canThrowAway(line(paper, ''))).toBe(false);
    expect(struckText(line(paper))).toBe('');
    expect(struckText(line(paper, ''))).toBe('thrown away');
    expect(struckText(line(paper, 'blurred'))).toContain('thrown away: ');
    expect(struckText(line(fuelled, 'a slip'))).toContain('struck out: ');
  });
});

describe('a trouble', () => {
  const trouble: TroubleForm = { day: '2026-06-01', reading: '', words: 'It whistles\nwhen cold', when: '', symptoms: ['rough-idle'], absent: [], scans: [], answers: [], asked: '' };

  it('is told by the words, else by what was ticked, else by what a scanner said, and whether it has ended', () => {
    expect(saysText({ kind: 'trouble', trouble }, 'km')).toBe('Something is wrong: It whistles');
    expect(saysText({ kind: 'trouble', trouble: { ...trouble, words: ' ' } }, 'km')).toBe('Something is wrong: Rough idle');
    const scanned = { ...trouble, words: '', symptoms: [], scans: [{ day: '2026-06-01', reading: '', text: 'P0171', cleared: false }] };
    expect(saysText({ kind: 'trouble', trouble: scanned }, 'km')).toBe('Something is wrong: P0171');
    const end = { day: '2026-06-02', visit: '', cause: 'vacuum-leak' };
    expect(saysText({ kind: 'trouble', trouble: { ...trouble, end } }, 'km')).toBe('Was wrong: It whistles');
  });
});
