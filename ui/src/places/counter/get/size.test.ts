// The size of the number that the clerk reads.

import { describe, expect, it } from 'vitest';
import { lineSize, numberSize, wordsOf } from './size';

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

  it('breaks between its words, and not at a dash', () => {
    expect(['A1', 'QF 20-118', ' VW-S  3 11 '].map(wordsOf)).toEqual([['A1'], ['QF', '20-118'], ['VW-S', '3', '11']]);
  });
});
