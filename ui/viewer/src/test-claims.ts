// For the tests: CBOR written in its deterministic form, and claims as a card might well make them.

import { concatenate } from './cose';

type Value = number | string | null | Uint8Array | readonly Value[] | ReadonlyMap<number, Value>;

/** Deterministic CBOR of what a card can hold; maps are written in the order given. */
export function encode(value: Value): Uint8Array {
  if (value === null) return Uint8Array.of(0xf6);
  if (typeof value === 'number') return value < 0 ? head(1, -1 - value) : head(0, value);
  if (typeof value === 'string') {
    const text = new TextEncoder().encode(value);
    return concatenate([head(3, text.length), text]);
  }
  if (value instanceof Uint8Array) return concatenate([head(2, value.length), value]);
  if (value instanceof Map) {
    return concatenate([head(5, value.size), ...[...value].flatMap(([key, inner]) => [encode(key), encode(inner as Value)])]);
  }
  const items = value as readonly Value[];
  return concatenate([head(4, items.length), ...items.map(encode)]);
}

function head(major: number, argument: number): Uint8Array {
  const start = major << 5;
  if (argument < 24) return Uint8Array.of(start + argument);
  if (argument < 0x100) return Uint8Array.of(start + 24, argument);
  if (argument < 0x1_0000) return Uint8Array.of(start + 25, argument >> 8, argument & 255);
  return Uint8Array.of(start + 26, argument >>> 24, (argument >> 16) & 255, (argument >> 8) & 255, argument & 255);
}

/** A card of a plainly invented car with so many visits, and with whatever claims are put in place of its own. */
export function claimsOf(visits: number, change: ReadonlyMap<number, Value> = new Map()): Uint8Array {
  const rows = Array.from({ length: visits }, (_, at) => visit(at));
  const claims = new Map<number, Value>([
    [1, 20_781],
    [3, new Map<number, Value>([[1, 'The green estate'], [2, '1M8GDM9AXKP042788'], [3, 1], [4, 'Invented Wagon 1.6, 2014'], [5, 16_161]])],
    [4, 0],
    [5, [20_780, 148_420]],
    [6, rows],
    [7, visits + 3],
    [8, Uint8Array.from({ length: 16 }, (_, at) => at * 11)],
    [9, [[1, 20_900, 158_000], [10, 20_850, null], [11, null, 180_000], ['Tow bar wiring', null, null]]],
    [10, [[19_650, 118_000, 118_000]]],
  ]);
  return encode(new Map([...claims, ...change].sort(([one], [other]) => one - other)));
}

const ITEMS = [[1, 2], [1], [1, 5, 'Tow bar wiring'], [10, 16], [15, 14, 13, 12], [11, 9], [1, 3], []];
const FLAGS = [1 + 4, 2 + 4 + 8, 1 + 16, 2 + 4, 1, 2 + 32, 1 + 2 + 4 + 8, 0];

function visit(at: number): readonly Value[] {
  const since = at === 0 ? [17_100, 31_200] : [170 + ((at * 37) % 90), 5_100 + ((at * 997) % 4_000)];
  return [...since, FLAGS[at % FLAGS.length] as number, ...(ITEMS[at % ITEMS.length] as readonly Value[])];
}
