// Raw DEFLATE (RFC 1951), inflated strictly and within a bound.
//
// Written out here because a reader has to refuse what the small libraries let pass: bytes after the end of the
// stream, reserved symbols, codes that are over-subscribed or incomplete, lengths without their complement. The
// browsers' own DecompressionStream is too young for many a phone.

import { Refusal } from './refusal';

/** How many bytes a reader inflates at most: 64 KiB. */
export const INFLATED_MAX = 64 * 1024;

/** Inflates a stream that fills `bytes`. Throws a Refusal when it is damaged, too large, or followed by more. */
export function inflate(bytes: Uint8Array): Uint8Array {
  const input = new BitReader(bytes);
  const output = new Output();
  let last = false;
  while (!last) {
    last = input.bits(1) === 1;
    inflateBlock(input, output);
  }
  if (input.nextByte() !== bytes.length) throw refused('bytes follow after its end');
  return output.written();
}

/** The base of each length symbol from 257 (RFC 1951, section 3.2.5), and how many extra bits follow it. */
const LENGTH_BASE = [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];
const LENGTH_EXTRA = [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];

/** The order in which the lengths of the code of code lengths stand (section 3.2.7). */
const LENGTH_ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

const LONGEST_CODE = 15;
const END_OF_BLOCK = 256;

/** A Huffman code: how many codes there are of each length, and the symbols in the order of their codes. */
interface Code {
  readonly counts: readonly number[];
  readonly symbols: readonly number[];
}

interface Codes {
  readonly literals: Code;
  readonly distances: Code;
}

class BitReader {
  private at = 0;

  constructor(private readonly bytes: Uint8Array) {}

  /** The next bits as a number, the first bit least significant. */
  bits(count: number): number {
    let value = 0;
    for (let bit = 0; bit < count; bit += 1) value |= this.bit() << bit;
    return value;
  }

  bit(): number {
    const byte = this.bytes[this.at >> 3];
    if (byte === undefined) throw refused('it ends early');
    const bit = (byte >> (this.at & 7)) & 1;
    this.at += 1;
    return bit;
  }

  /** Which byte comes next when the rest of a begun one is left out. */
  nextByte(): number {
    return (this.at + 7) >> 3;
  }

  /** Whole bytes from the next byte on. */
  take(length: number): Uint8Array {
    const start = this.nextByte();
    if (start + length > this.bytes.length) throw refused('it ends early');
    this.at = (start + length) * 8;
    return this.bytes.subarray(start, start + length);
  }
}

class Output {
  private readonly bytes = new Uint8Array(INFLATED_MAX);
  private length = 0;

  push(byte: number): void {
    if (this.length === INFLATED_MAX) throw refused('it holds more than a card may');
    this.bytes[this.length] = byte;
    this.length += 1;
  }

  /** Repeats what was written `distance` bytes ago; source and target may overlap. */
  repeat(length: number, distance: number): void {
    if (distance > this.length) throw refused('it refers to bytes before its start');
    for (let count = 0; count < length; count += 1) this.push(this.bytes[this.length - distance] as number);
  }

  written(): Uint8Array {
    return this.bytes.slice(0, this.length);
  }
}

function inflateBlock(input: BitReader, output: Output): void {
  switch (input.bits(2)) {
    case 0:
      return copyStored(input, output);
    case 1:
      return inflateCoded(input, output, FIXED);
    case 2:
      return inflateCoded(input, output, readCodes(input));
    default:
      throw refused('a block is of a reserved type');
  }
}

function copyStored(input: BitReader, output: Output): void {
  const [low, high, notLow, notHigh] = input.take(4) as unknown as [number, number, number, number];
  if ((low ^ notLow) !== 0xff || (high ^ notHigh) !== 0xff) throw refused('a length does not match its complement');
  for (const byte of input.take(low | (high << 8))) output.push(byte);
}

function inflateCoded(input: BitReader, output: Output, codes: Codes): void {
  for (;;) {
    const symbol = decodeSymbol(input, codes.literals);
    if (symbol === END_OF_BLOCK) return;
    if (symbol < END_OF_BLOCK) output.push(symbol);
    else output.repeat(readLength(input, symbol - 257), readDistance(input, codes.distances));
  }
}

function readLength(input: BitReader, index: number): number {
  const base = LENGTH_BASE[index];
  if (base === undefined) throw refused('a length symbol is reserved');
  return base + input.bits(LENGTH_EXTRA[index] as number);
}

/** Distances double every two symbols, so their bases need no table. */
function readDistance(input: BitReader, code: Code): number {
  const symbol = decodeSymbol(input, code);
  if (symbol > 29) throw refused('a distance symbol is reserved');
  if (symbol < 4) return symbol + 1;
  const extra = (symbol >> 1) - 1;
  return ((2 + (symbol & 1)) << extra) + 1 + input.bits(extra);
}

/** Walks down the canonical code bit by bit; a card is small enough for that. */
function decodeSymbol(input: BitReader, code: Code): number {
  let value = 0;
  let first = 0;
  let index = 0;
  for (let length = 1; length <= LONGEST_CODE; length += 1) {
    value |= input.bit();
    const count = code.counts[length] as number;
    if (value - first < count) return code.symbols[index + value - first] as number;
    index += count;
    first = (first + count) << 1;
    value <<= 1;
  }
  throw refused('a code stands for no symbol');
}

function readCodes(input: BitReader): Codes {
  const literalCount = input.bits(5) + 257;
  const distanceCount = input.bits(5) + 1;
  const lengthCount = input.bits(4) + 4;
  if (literalCount > 286 || distanceCount > 30) throw refused('a block has more symbols than there are');
  const ordered = new Array<number>(19).fill(0);
  for (let at = 0; at < lengthCount; at += 1) ordered[LENGTH_ORDER[at] as number] = input.bits(3);
  const lengths = readLengths(input, codeOf(ordered, false), literalCount + distanceCount);
  return {
    literals: codeOf(lengths.slice(0, literalCount), true),
    distances: codeOf(lengths.slice(literalCount), true),
  };
}

function readLengths(input: BitReader, code: Code, total: number): number[] {
  const lengths: number[] = [];
  while (lengths.length < total) {
    const symbol = decodeSymbol(input, code);
    if (symbol < 16) lengths.push(symbol);
    else appendRun(input, symbol, lengths);
  }
  if (lengths.length > total) throw refused('a run of code lengths goes past its end');
  return lengths;
}

function appendRun(input: BitReader, symbol: number, lengths: number[]): void {
  const repeated = symbol === 16 ? lengths[lengths.length - 1] : 0;
  if (repeated === undefined) throw refused('a run of code lengths has nothing to repeat');
  const [bits, least] = ({ 16: [2, 3], 17: [3, 3], 18: [7, 11] } as const)[symbol as 16 | 17 | 18];
  for (let count = input.bits(bits) + least; count > 0; count -= 1) lengths.push(repeated);
}

/** The canonical code with these lengths; it must be complete, or, where allowed, have no code longer than one bit. */
function codeOf(lengths: readonly number[], mayBeShort: boolean): Code {
  const counts = new Array<number>(LONGEST_CODE + 1).fill(0);
  for (const length of lengths) counts[length] = (counts[length] as number) + 1;
  counts[0] = 0;
  let left = 1;
  for (let length = 1; length <= LONGEST_CODE; length += 1) {
    left = left * 2 - (counts[length] as number);
    if (left < 0) throw refused('a code is over-subscribed');
  }
  if (left > 0 && !(mayBeShort && counts.every((count, length) => length < 2 || count === 0))) {
    throw refused('a code is incomplete');
  }
  const used = lengths.map((length, symbol) => ({ length, symbol })).filter(({ length }) => length > 0);
  used.sort((one, other) => one.length - other.length || one.symbol - other.symbol);
  return { counts, symbols: used.map(({ symbol }) => symbol) };
}

/** The fixed codes (section 3.2.6), with their reserved symbols, so that they are complete. */
const FIXED: Codes = {
  literals: codeOf([...runOf(144, 8), ...runOf(112, 9), ...runOf(24, 7), ...runOf(8, 8)], false),
  distances: codeOf(runOf(32, 5), false),
};

function runOf(count: number, length: number): number[] {
  return new Array<number>(count).fill(length);
}

function refused(what: string): Refusal {
  return new Refusal('stream', `the signed content does not unpack: ${what}`);
}
