import { describe, expect, it } from 'vitest';

import { CborError, CborFloat, CborMap, CborTag, DEPTH, decode } from './cbor';
import { hex } from './test-card';

describe('values of RFC 8949, appendix A', () => {
  it.each([
    ['00', 0], ['01', 1], ['0a', 10], ['17', 23], ['1818', 24], ['1819', 25], ['1864', 100], ['1903e8', 1000],
    ['1a000f4240', 1_000_000], ['1b000000e8d4a51000', 1_000_000_000_000],
    ['1bffffffffffffffff', 18_446_744_073_709_551_615n], ['3bffffffffffffffff', -18_446_744_073_709_551_616n],
    ['20', -1], ['29', -10], ['3863', -100], ['3903e7', -1000],
    ['f4', false], ['f5', true], ['f6', null],
    ['60', ''], ['6161', 'a'], ['6449455446', 'IETF'], ['62225c', '"\\'], ['62c3bc', 'ü'], ['63e6b0b4', '水'],
    ['64f0908591', '\u{10151}'],
    ['80', []], ['83010203', [1, 2, 3]], ['8301820203820405', [1, [2, 3], [4, 5]]],
  ])('%s', (bytes, value) => {
    expect(decode(hex(bytes))).toEqual(value);
  });

  it.each([
    ['f90000', 0], ['f98000', -0], ['f93c00', 1], ['fb3ff199999999999a', 1.1], ['f93e00', 1.5], ['f97bff', 65_504],
    ['fa47c35000', 100_000], ['fa7f7fffff', 3.4028234663852886e38], ['fb7e37e43c8800759c', 1e300],
    ['f90001', 5.960464477539063e-8], ['f90400', 0.00006103515625], ['f9c400', -4], ['fbc010666666666666', -4.1],
    ['f97c00', Infinity], ['f97e00', NaN], ['f9fc00', -Infinity],
  ])('%s as a float', (bytes, value) => {
    expect(decode(hex(bytes))).toEqual(new CborFloat(value));
  });

  it('byte strings, maps and tags', () => {
    expect(decode(hex('4401020304'))).toEqual(hex('01020304'));
    expect(decode(hex('a201020304'))).toEqual(new CborMap([[1, 2], [3, 4]]));
    expect((decode(hex('a26161016162820203')) as CborMap).entries).toEqual([['a', 1], ['b', [2, 3]]]);
    expect(decode(hex('c11a514b67b0'))).toEqual(new CborTag(1, 1_363_896_240));
    expect(decode(hex('c249010000000000000000'))).toEqual(new CborTag(2, hex('010000000000000000')));
  });
});

describe('refused', () => {
  it.each([
    ['1817', 'an integer longer than it needs'], ['190017', 'an integer longer than it needs'],
    ['1a0000ffff', 'an integer longer than it needs'], ['1b00000000ffffffff', 'an integer longer than it needs'],
    ['3817', 'a negative integer longer than it needs'], ['5803010203', 'a length longer than it needs'],
    ['7803616263', 'a length longer than it needs'], ['9800', 'a length longer than it needs'],
    ['5f42010243030405ff', 'an indefinite byte string'], ['7f61616161ff', 'an indefinite text'],
    ['9fff', 'an indefinite array'], ['bfff', 'an indefinite map'], ['ff', 'a lone break'],
    ['a2030401 02', 'keys out of order'], ['a201020103', 'a key that comes twice'],
    ['a2616101 0102', 'keys in the order of RFC 7049 only'],
    ['fa3fc00000', '1.5 in single precision'], ['fb3ff8000000000000', '1.5 in double precision'],
    ['fb40f86a0000000000', '100000.0 in double precision'], ['fa7f800000', 'infinity in single precision'],
    ['fa00000000', 'zero in single precision'], ['fa33800000', 'the least half in single precision'],
    ['fa7fc00000', 'NaN in single precision'], ['fb7ff8000000000000', 'NaN in double precision'], ['f97e01', 'another NaN'],
    ['c2420100', 'a bignum that fits 64 bits'], ['c24900ffffffffffffffff', 'a bignum with a leading zero'],
    ['f7', 'undefined'], ['f0', 'simple(16)'], ['f818', 'simple(24), which is not well-formed'], ['f8ff', 'simple(255)'],
    ['1c', 'reserved additional information'], ['', 'nothing'], ['19ff', 'an integer cut short'],
    ['43ffff', 'bytes cut short'], ['8201', 'an array cut short'], ['a101', 'a map cut short'],
    ['5bffffffffffffffff00', 'a length beyond memory'], ['9bffffffffffffffff00', 'a count beyond memory'],
    ['bb7fffffffffffffff00', 'a count beyond memory'], ['9a7fffffff00', 'a count beyond the input'],
    ['61ff', 'text that is no UTF-8'], ['63eda080', 'a surrogate'], ['62c080', 'an overlong form'],
    ['0000', 'bytes after the value'], ['8000', 'bytes after the value'],
  ])('%s, %s', (bytes) => {
    expect(() => decode(hex(bytes.replace(' ', '')))).toThrow(CborError);
  });
});

describe('nesting', () => {
  it.each([['arrays', '81'], ['maps', 'a100'], ['tags', 'c1']])(`is read to the limit in %s and refused beyond`, (_, open) => {
    expect(() => decode(hex(open.repeat(DEPTH) + '00'))).not.toThrow();
    expect(() => decode(hex(open.repeat(DEPTH + 1) + '00'))).toThrow('nested too deeply');
    expect(() => decode(hex(open.repeat(30_000) + '00'))).toThrow('nested too deeply');
  });
});

it('keeps a mark at the beginning of a text, which is part of it', () => {
  expect(decode(hex('64efbbbf61'))).toBe('\ufeffa');
});
