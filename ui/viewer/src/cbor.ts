// Deterministic CBOR (RFC 8949, section 4.2.1), read strictly: two different byte strings never mean the same value.
//
// Accepted are integers, byte and text strings, arrays, maps, tags, false, true, null and floating-point numbers,
// each in its shortest form and of definite length, map keys in strictly ascending order of their bytes. Other
// simple values have no meaning in a card and are refused. Nesting is bounded, and nothing is allocated on the
// word of a length that the input does not hold.

/** How deep arrays, maps and tags may be nested. */
export const DEPTH = 24;

/** A decoded value. Integers outside the range that a number holds exactly are bigints. */
export type Cbor = number | bigint | string | boolean | null | Uint8Array | CborFloat | CborMap | CborTag | readonly Cbor[];

/** A floating-point number, kept apart from integers because 1.0 and 1 are different claims. */
export class CborFloat {
  constructor(readonly value: number) {}
}

/** A tagged value. */
export class CborTag {
  constructor(
    readonly tag: number | bigint,
    readonly value: Cbor,
  ) {}
}

/** A map, its entries in the order of their keys' bytes. */
export class CborMap {
  constructor(readonly entries: ReadonlyArray<readonly [Cbor, Cbor]>) {}

  /** What stands under an integer key; undefined when nothing does. */
  get(key: number): Cbor | undefined {
    return this.entries.find(([candidate]) => candidate === key)?.[1];
  }
}

/** Why bytes are no deterministic CBOR. */
export class CborError extends Error {}

/** Reads one value that fills `bytes`. Throws a CborError when they are not its deterministic form. */
export function decode(bytes: Uint8Array): Cbor {
  const reader = new Reader(bytes);
  const value = reader.value(DEPTH);
  if (reader.at !== bytes.length) {
    throw new CborError('bytes follow after the end of the value');
  }
  return value;
}

const POSITIVE_BIGNUM = 2;
const NEGATIVE_BIGNUM = 3;

class Reader {
  at = 0;
  private readonly view: DataView;

  constructor(private readonly bytes: Uint8Array) {
    this.view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  }

  /** Reads one value; `depth` is how many more levels of nesting it may hold. */
  value(depth: number): Cbor {
    const initial = this.byte();
    const major = initial >> 5;
    const info = initial & 31;
    if (major === 7) return this.simpleOrFloat(info);
    const argument = this.argument(info);
    switch (major) {
      case 0:
        return argument;
      case 1:
        return typeof argument === 'bigint' ? narrow(-1n - argument) : -1 - argument;
      case 2:
        return this.take(argument).slice();
      case 3:
        return utf8(this.take(argument));
      case 4:
        return this.array(argument, inner(depth));
      case 5:
        return this.map(argument, inner(depth));
      default:
        return this.tagged(argument, depth);
    }
  }

  private byte(): number {
    const byte = this.bytes[this.at];
    if (byte === undefined) throw new CborError('the bytes end early');
    this.at += 1;
    return byte;
  }

  /** The next bytes; the length is held against what is left before anything else is done with it. */
  private take(length: number | bigint): Uint8Array {
    if (length > this.bytes.length - this.at) {
      throw new CborError('the bytes end early');
    }
    const start = this.at;
    this.at += Number(length);
    return this.bytes.subarray(start, this.at);
  }

  private unsigned(width: 1 | 2 | 4 | 8): number | bigint {
    const start = this.at;
    this.take(width);
    if (width === 1) return this.view.getUint8(start);
    if (width === 2) return this.view.getUint16(start);
    return width === 4 ? this.view.getUint32(start) : this.view.getBigUint64(start);
  }

  /** The argument of a head, which must not fit a shorter head. */
  private argument(info: number): number | bigint {
    if (info < 24) return info;
    if (info > 27) throw new CborError('a length that is indefinite or reserved');
    const value = this.unsigned((1 << (info - 24)) as 1 | 2 | 4 | 8);
    const least = [24, 0x100, 0x1_0000, 0x1_0000_0000][info - 24] as number;
    if (value < least) throw new CborError('a number that is not in its shortest form');
    return narrow(value);
  }

  private array(length: number | bigint, depth: number): Cbor[] {
    this.mustHold(length);
    const items: Cbor[] = [];
    while (items.length < length) items.push(this.value(depth));
    return items;
  }

  private map(length: number | bigint, depth: number): CborMap {
    this.mustHold(length);
    const entries: Array<readonly [Cbor, Cbor]> = [];
    let before: Uint8Array | undefined;
    while (entries.length < length) {
      const start = this.at;
      const key = this.value(depth);
      const bytes = this.bytes.subarray(start, this.at);
      if (before !== undefined && !ascends(before, bytes)) {
        throw new CborError('map keys that are not in strictly ascending order');
      }
      before = bytes;
      entries.push([key, this.value(depth)]);
    }
    return new CborMap(entries);
  }

  /** Every item takes a byte at least, so a length beyond the rest of the input is false. */
  private mustHold(length: number | bigint): void {
    if (length > this.bytes.length - this.at) {
      throw new CborError('more items than there are bytes');
    }
  }

  private tagged(tag: number | bigint, depth: number): Cbor {
    const value = this.value(inner(depth));
    if ((tag === POSITIVE_BIGNUM || tag === NEGATIVE_BIGNUM) && value instanceof Uint8Array) {
      // RFC 8949, section 3.4.3: what fits 64 bits is a plain integer, and a bignum has no leading zero.
      if (value.length <= 8 || value[0] === 0) throw new CborError('a bignum that is not in its shortest form');
    }
    return new CborTag(tag, value);
  }

  private simpleOrFloat(info: number): Cbor {
    switch (info) {
      case 20:
        return false;
      case 21:
        return true;
      case 22:
        return null;
      case 25:
        return half(Number(this.unsigned(2)));
      case 26:
        return this.single();
      case 27:
        return this.double();
      default:
        throw new CborError('a simple value without meaning');
    }
  }

  private single(): CborFloat {
    const start = this.at;
    this.take(4);
    const value = this.view.getFloat32(start);
    if (fitsHalf(value)) throw new CborError('a float that is not in its shortest form');
    return new CborFloat(value);
  }

  private double(): CborFloat {
    const start = this.at;
    this.take(8);
    const value = this.view.getFloat64(start);
    if (Number.isNaN(value) || Math.fround(value) === value) {
      throw new CborError('a float that is not in its shortest form');
    }
    return new CborFloat(value);
  }
}

function inner(depth: number): number {
  if (depth === 0) throw new CborError('values nested too deeply');
  return depth - 1;
}

function narrow(value: number | bigint): number | bigint {
  const number = Number(value);
  return Number.isSafeInteger(number) ? number : value;
}

function ascends(before: Uint8Array, after: Uint8Array): boolean {
  const shorter = Math.min(before.length, after.length);
  for (let at = 0; at < shorter; at += 1) {
    const difference = (after[at] as number) - (before[at] as number);
    if (difference !== 0) return difference > 0;
  }
  return after.length > before.length;
}

function utf8(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new CborError('text that is no UTF-8');
  }
}

/** A half-precision number (RFC 8949, appendix D); of the many NaNs only the one that section 4.2.2 suggests. */
function half(bits: number): CborFloat {
  const sign = bits >> 15 === 1 ? -1 : 1;
  const exponent = (bits >> 10) & 31;
  const fraction = bits & 0x3ff;
  if (exponent === 31) {
    if (fraction !== 0 && bits !== 0x7e00) throw new CborError('a NaN that is not in its shortest form');
    return new CborFloat(fraction === 0 ? sign * Infinity : NaN);
  }
  const value = exponent === 0 ? fraction * 2 ** -24 : (1024 + fraction) * 2 ** (exponent - 25);
  return new CborFloat(sign * value);
}

/** Whether half precision holds the number exactly; NaN counts as held, because only its half form is accepted. */
function fitsHalf(value: number): boolean {
  const size = Math.abs(value);
  if (!Number.isFinite(size) || size === 0) return true;
  const exponent = Math.max(Math.floor(Math.log2(size)), -14);
  return size <= 65_504 && Number.isInteger(size * 2 ** (10 - exponent));
}
