// A refusal is one sentence, in which days and numbers stand as everywhere else.

import { describe, expect, it } from 'vitest';
import { refusalText } from './refusals';

const said = (code: string, values: Record<string, string>) => refusalText({ code, values, can_keep: false }).replaceAll('\u00a0', ' ');

describe('a refusal', () => {
  it('has its days written out and its readings grouped', () => {
    const text = said('reading-lower', { reading: '91234 km', than: '148100 km', on: '2026-10-12' });
    expect(text).toContain('91 234 km is lower than the 148 100 km of 12 Oct 2026;');
  });

  it('groups amounts and the limits that it names, and leaves names as they are', () => {
    expect(said('text-too-long', { most: '2000' })).toContain('more than 2 000 characters');
    expect(said('image-too-large', { width: '12000', height: '900', most: '100' })).toContain('12 000 × 900');
    expect(said('measurement-range', { value: '1234.5', unit: 'mm', least: '0', most: '20' })).toContain('1 234.5 mm');
    expect(said('item-unknown', { number: '4711' })).toContain('4711');
    expect(said('yearly', { text: 'x' })).toContain('between 1 and 1 000 000');
  });

  it('says a day once where from and to are the same', () => {
    const fast = { reading: '148100 km', 'per-day': '49580 km' };
    expect(said('reading-too-fast', { ...fast, from: '2026-11-24', to: '2026-11-25' })).toContain('49 580 km a day from 24 Nov 2026 to 25 Nov 2026;');
    const one = said('reading-too-fast', { ...fast, from: '2026-11-25', to: '2026-11-25' });
    expect(one).toMatch(/^With 148 100 km the car would have gone 49 580 km on 25 Nov 2026 alone;/);
    expect(one.match(/25 Nov 2026/g)).toHaveLength(1);
  });

  it('quotes what was typed as it was typed', () => {
    expect(said('day-form', { text: '2026-02-31' })).toContain('2026-02-31');
    expect(said('not-a-number', { text: '148100 km' })).toContain('‘148100 km’');
  });

  it('of a kind without words still says its code', () => {
    expect(said('from-the-future', {})).toContain('from-the-future');
  });
});
