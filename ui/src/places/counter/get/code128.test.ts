// Bars against the rules of Code 128: patterns and values of ISO/IEC 15417, table 1, from memory.

import { describe, expect, it } from 'vitest';
import { barsOf, QUIET, sharpWidth } from './code128';

/** The dark and light modules between the quiet zones. */
function modulesOf(number: string): string {
  const symbol = barsOf(number);
  if (!symbol) return '';
  const modules = Array.from({ length: symbol.width }, () => '0');
  for (const { from, width } of symbol.bars) modules.fill('1', from, from + width);
  expect(modules.slice(0, QUIET).concat(modules.slice(-QUIET)).join('')).toBe('0'.repeat(2 * QUIET));
  return modules.slice(QUIET, -QUIET).join('');
}

describe('the bars of a number', () => {
  it('start in code set B, carry the check character, and stop', () => {
    // Start B is 104, 'A' is 33 and '1' is 17: the check is (104 + 1 × 33 + 2 × 17) mod 103 = 68, which is 'd'.
    const patterns = ['11010010000', '10100011000', '10011100110', '10000100110', '1100011101011'];
    expect(modulesOf('A1')).toBe(patterns.join(''));
  });

  it('pack pairs of digits in code set C', () => {
    // Start C is 105; the check is (105 + 1 × 12 + 2 × 34) mod 103 = 82.
    const patterns = ['11010011100', '10110011100', '10001011000', '10010011110', '1100011101011'];
    expect(modulesOf('1234')).toBe(patterns.join(''));
  });

  it('are not drawn where they would say something else, or be too thin', () => {
    expect(barsOf('Ölfilter')).toBeUndefined();
    expect(barsOf('A'.repeat(25))).toBeUndefined();
    expect(barsOf('  ')).toBeUndefined();
  });
});

it('is as wide as whole dots allow', () => {
  expect(sharpWidth(100, 328, 3)).toBe(300);
  expect(sharpWidth(100, 299, 1)).toBe(200);
  expect(sharpWidth(400, 300, 1)).toBe(400);
});
