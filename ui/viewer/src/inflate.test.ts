import { constants, deflateRawSync, inflateRawSync } from 'node:zlib';

import { describe, expect, it } from 'vitest';

import { INFLATED_MAX, inflate } from './inflate';
import { hex } from './test-card';

const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

describe('streams made by zlib', () => {
  it.each([
    ['0300', ''], ['010000ffff', ''], ['4b0400', 'a'], ['cb48cdc9c90700', 'hello'], ['4b4ca43d0000', 'a'.repeat(100)],
  ])('%s', (stream, content) => {
    expect(text(inflate(hex(stream)))).toBe(content);
  });

  it.each([0, 1, 2, 3, 4])('of all levels and block types, strategy %i', (strategy) => {
    const random = randomBytes(7);
    for (let level = 0; level <= 9; level += 1) {
      for (const length of [0, 1, 100, 5_000, INFLATED_MAX]) {
        const content = Uint8Array.from({ length }, (_, at) => (at % 3 === 0 ? random() & 15 : at >> 4));
        expect(Buffer.compare(inflate(deflateRawSync(content, { level, strategy })), content)).toBe(0);
      }
    }
  });
});

describe('refused', () => {
  it('what goes past the limit by one byte, and a bomb', () => {
    expect(() => inflate(deflateRawSync(new Uint8Array(INFLATED_MAX + 1)))).toThrow('more than a card may');
    expect(() => inflate(deflateRawSync(new Uint8Array(50_000_000)))).toThrow('more than a card may');
  });

  it('bytes after the end', () => {
    expect(() => inflate(hex('cb48cdc9c9070000'))).toThrow('bytes follow');
    expect(() => inflate(hex('010000ffff00'))).toThrow('bytes follow');
  });

  it('a stream cut short anywhere', () => {
    const stream = deflateRawSync(Buffer.from('brake fluid, brake pads, brake discs, brake hoses'));
    for (let length = 0; length < stream.length; length += 1) {
      expect(() => inflate(stream.subarray(0, length))).toThrow('ends early');
    }
  });

  // The first bits of each stream are written out by RFC 1951, sections 3.2.3 to 3.2.7.
  it.each([
    ['07', 'reserved type'],
    ['010000feff', 'complement'],
    ['01ffff0000', 'ends early'],
    [bits('1 10', fixed(0b0000001, 7), '00000'), 'before its start'],
    [bits('1 10', '11000110'), 'length symbol is reserved'],
    [bits('1 10', '01010001', fixed(0b0000001, 7), '11110'), 'distance symbol is reserved'],
    [bits('1 01', '11111 00000 0000'), 'more symbols than there are'],
    [bits('1 01', '00000 11111 0000'), 'more symbols than there are'],
    [bits('1 01', '00000 00000 0000', '100 100 100 000'), 'over-subscribed'],
    [bits('1 01', '00000 00000 0000', '010 000 000 000'), 'incomplete'],
    [bits('1 01', '00000 00000 0000', '100 000 000 100', '1 00'), 'nothing to repeat'],
  ])('%s: %s', (stream, why) => {
    expect(() => inflate(hex(stream))).toThrow(why);
  });
});

it('agrees with zlib on streams with a few bits turned, whether they inflate or not', () => {
  const random = randomBytes(11);
  const original = deflateRawSync(Uint8Array.from({ length: 600 }, (_, at) => (at * at) & 31), { level: 9 });
  let accepted = 0;
  for (let round = 0; round < 20_000; round += 1) {
    const stream = Uint8Array.from(original);
    for (let flips = 1 + (random() % 3); flips > 0; flips -= 1) {
      const at = round % 2 === 0 ? random() % 24 : random() % stream.length;
      stream[at] = (stream[at] as number) ^ (1 << (random() & 7));
    }
    const ours = attempt(() => inflate(stream));
    expect(ours).toBe(attempt(() => zlibInflate(stream)));
    if (ours !== 'refused') accepted += 1;
  }
  // Neither side of the comparison may have been empty.
  expect(accepted).toBeGreaterThan(100);
  expect(accepted).toBeLessThan(19_900);
});

function attempt(inflated: () => Uint8Array): string {
  try {
    return Buffer.from(inflated()).toString('hex');
  } catch {
    return 'refused';
  }
}

/** zlib, held to the same rules: at most the limit, nothing after the end. */
function zlibInflate(stream: Uint8Array): Uint8Array {
  const options = { info: true, maxOutputLength: INFLATED_MAX, finishFlush: constants.Z_SYNC_FLUSH };
  const result = inflateRawSync(stream, options) as unknown as { buffer: Buffer; engine: { bytesWritten: number } };
  if (result.engine.bytesWritten !== stream.length) throw new Error('bytes follow');
  // zlib in this mode gives out what it has of a stream that ends early; the default mode does not.
  inflateRawSync(stream);
  return result.buffer;
}

/** Bits in the order in which they are read, as bytes in hexadecimal; zeros fill the last bytes. */
function bits(...groups: string[]): string {
  const all = groups.join('').replace(/ /g, '');
  const bytes = Array.from({ length: Math.ceil(all.length / 8) + 4 }, (_, at) =>
    parseInt([...all.slice(at * 8, at * 8 + 8).padEnd(8, '0')].reverse().join(''), 2),
  );
  return Buffer.from(bytes).toString('hex');
}

/** A fixed Huffman code, which is packed from its most significant bit. */
function fixed(code: number, length: number): string {
  return code.toString(2).padStart(length, '0');
}

/** A small generator of the kind in Numerical Recipes, so that every run tries the same streams. */
function randomBytes(start: number): () => number {
  let state = start;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state >>> 24;
  };
}
