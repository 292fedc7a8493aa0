// The size of the number that the clerk reads, and what he is shown.

import { describe, expect, it } from 'vitest';
import type { GetView, PartView } from '../../door/types';
import { lastText, lineSize, numberOf, numberSize, wordCount } from './lib';

const part: PartView = { name: 'oil filter', maker: 'Quarrel', number: 'QF 20-118', quantity: '1', measure: 'piece', price: null, served: null, kind: '' };
const get: GetView = { item: { of: 'own', name: 'Roof rail' }, part, workshop: '', day: '2025-11-03', lasted: null };

describe('numberSize', () => {
  it('fits the longest word of the number into the screen', () => {
    for (const text of ['A1', 'QF 20-118', '0123456789ABCDEF0123']) {
      const longest = Math.max(...text.split(' ').map((word) => word.length));
      expect(numberSize(text) * longest * 0.68).toBeLessThanOrEqual(88.01);
    }
  });

  it('does not grow without end for a short number', () => {
    expect(numberSize('7')).toBe(22);
  });
});

describe('lineSize', () => {
  it('fits the whole number on one line, never larger than broken into words', () => {
    for (const text of ['A1', 'QF 20-118', '0123456789ABCDEF0123', 'A B C D E F']) {
      expect(lineSize(text) * text.length * 0.68).toBeLessThanOrEqual(88.01);
      expect(lineSize(text)).toBeLessThanOrEqual(numberSize(text));
    }
  });

  it('counts the lines that the words can take', () => {
    expect([wordCount('A1'), wordCount('QF 20-118'), wordCount(' VW-S  3 11 ')]).toEqual([1, 2, 3]);
  });
});

describe('a row', () => {
  it('shows the number, or the name when there is none', () => {
    expect(numberOf(get)).toBe('QF 20-118');
    expect(numberOf({ ...get, part: { ...part, number: '' } })).toBe('oil filter');
    expect(numberOf({ ...get, part: null })).toBe('');
  });

  it('says the last price only when there was one', () => {
    expect(lastText(get)).not.toContain('EUR');
    const dear = { ...get, part: { ...part, price: { number: '9.50', currency: 'EUR' } } };
    expect(lastText(dear)).toContain('9.50\u00a0EUR');
  });
});
