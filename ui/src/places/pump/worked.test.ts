// Any two of amount, price and total give the third.

import { describe, expect, it } from 'vitest';
import { decimalsOf, thirdOf } from './worked';

const third = (amount: string, price: string, total: string, currency = 'EUR') => thirdOf({ amount, price, total }, currency);

describe('the third', () => {
  it('follows from the other two', () => {
    expect(third('41.30', '1.689', '')).toEqual({ what: 'total', value: '69.76' }); // 69.7557
    expect(third('41,30', '', '69,76')).toEqual({ what: 'price', value: '1.689' }); // 1.68910
    expect(third('', '1.689', '69.76')).toEqual({ what: 'amount', value: '41.30' }); // 41.3025
  });

  it('is rounded half up, and exactly', () => {
    expect(third('2', '1.0025', '')?.value).toBe('2.01'); // 2.005 stands on the half; floating point would give 2.00
    expect(third('8', '', '1')?.value).toBe('0.125');
    expect(third('0.5', '0.01', '')?.value).toBe('0.01');
  });

  it('has the decimals of its currency', () => {
    expect(third('40', '182.4', '', 'JPY')?.value).toBe('7296');
    expect(third('40', '0.2125', '', 'KWD')?.value).toBe('8.500');
  });

  it('is nothing while two are missing, all three stand there, or one is no number above nothing', () => {
    for (const typed of [['41.3', '', ''], ['', '', ''], ['41.3', '1.6', '66'], ['x', '1.6', ''], ['0', '1.6', ''], ['-3', '1.6', ''], ['1e9', '2', '']]) {
      expect(third(typed[0] ?? '', typed[1] ?? '', typed[2] ?? ''), typed.join()).toBeUndefined();
    }
  });

  it('is nothing where it would round to nothing', () => {
    expect(third('0.1', '0.01', '')).toBeUndefined();
  });
});

// ISO 4217 (amendment list, table A.1): the minor units of these currencies.
it('knows the minor units of a currency', () => {
  expect(['EUR', 'JPY', 'KWD', 'CLF', 'USD', 'no such'].map(decimalsOf)).toEqual([2, 0, 3, 4, 2, 2]);
});
