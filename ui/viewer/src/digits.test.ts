import { describe, expect, it } from 'vitest';

import { fromDigits, toDigits } from './digits';
import { hex, toHex, vector } from './test-card';

describe('digits', () => {
  it('give the bytes of the vector, and back', () => {
    expect(toHex(fromDigits(vector.digits))).toBe(vector.packed);
    expect(toDigits(hex(vector.packed))).toBe(vector.digits);
  });

  it.each(Object.entries(vector.tail_cases))('end a last group %s as %s', (bytes, digits) => {
    expect(toDigits(hex(bytes))).toBe(digits);
    expect(toHex(fromDigits(digits))).toBe(bytes);
  });

  it.each([1, 2, 4, 6, 7, 9, 11, 12, 14, 16])('refuse a last group of %i digits', (length) => {
    expect(() => fromDigits('0'.repeat(length))).toThrow('a number of digits');
    expect(() => fromDigits('0'.repeat(17 + length))).toThrow('a number of digits');
  });

  it.each([
    [1, '255', '256'],
    [2, '65535', '65536'],
    [3, '16777215', '16777216'],
    [4, '4294967295', '4294967296'],
    [5, '1099511627775', '1099511627776'],
    [6, '281474976710655', '281474976710656'],
    [7, '72057594037927935', '72057594037927936'],
  ])('take the largest value of %i bytes and refuse the next', (count, largest, next) => {
    const width = [0, 3, 5, 8, 10, 13, 15, 17][count] as number;
    expect(toHex(fromDigits(largest.padStart(width, '0')))).toBe('ff'.repeat(count));
    expect(() => fromDigits(next.padStart(width, '0'))).toThrow('too large');
  });

  it.each(['', ' 25', '25 ', '2a5', '+25', '-25', '2.5', '٢٥٠', '２５０', '25\n', '1e3'])('refuse %j', (text) => {
    expect(() => fromDigits(text)).toThrow('other than decimal digits');
  });
});
