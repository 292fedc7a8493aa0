// SHA-256 and SHA-512 (FIPS 180-4), the one way for both, in words that a BigInt holds.
//
// Written out here because the tested library for it would take a sixth of the page, and no browser hashes without
// its crypto object, which plain http does not have. Nothing secret is hashed, so no time that it takes tells anything.

/** What differs between the two: bits of a word, rounds, and by how much the four mixing functions turn and shift. */
interface Kind {
  readonly bits: number;
  readonly rounds: number;
  readonly turns: readonly (readonly [number, number, number])[];
}

/** FIPS 180-4, section 4.1.2: the functions Sigma 0 and 1, which turn thrice, and sigma 0 and 1, which shift at last. */
const SHA256: Kind = { bits: 32, rounds: 64, turns: [[2, 13, 22], [6, 11, 25], [7, 18, 3], [17, 19, 10]] };

/** Section 4.1.3. */
const SHA512: Kind = { bits: 64, rounds: 80, turns: [[28, 34, 39], [14, 18, 41], [1, 8, 7], [19, 61, 6]] };

/** The 32 bytes of SHA-256. */
export function sha256(message: Uint8Array): Uint8Array {
  return sha2(message, SHA256);
}

/** The 64 bytes of SHA-512. */
export function sha512(message: Uint8Array): Uint8Array {
  return sha2(message, SHA512);
}

/** The first 64 bits of what follows the point in the square roots of the primes (section 5.3.5). */
const START = primes(8).map((prime) => fraction(prime, 2n));

/** The same of their cube roots (section 4.2.3). The words of SHA-256 are the first halves of those of SHA-512. */
const ROUND = primes(80).map((prime) => fraction(prime, 3n));

function sha2(message: Uint8Array, kind: Kind): Uint8Array {
  const size = kind.bits / 8;
  const words = padded(message, size);
  let state = START.map((word) => BigInt.asUintN(kind.bits, word >> BigInt(64 - kind.bits)));
  for (let at = 0; at < words.length; at += 16) {
    const mixed = mix(state, words.slice(at, at + 16), kind);
    state = state.map((word, index) => BigInt.asUintN(kind.bits, word + (mixed[index] as bigint)));
  }
  return Uint8Array.from(state.flatMap((word) => bytesOf(word, size)));
}

/** Section 6.2.2, steps 1 to 3: eight words of state, mixed with sixteen of the message. */
function mix(state: readonly bigint[], words: bigint[], { bits, rounds, turns }: Kind): bigint[] {
  const wrap = (word: bigint): bigint => BigInt.asUintN(bits, word);
  const turn = (word: bigint, by: number): bigint => (word >> BigInt(by)) | wrap(word << BigInt(bits - by));
  const [large0, large1, small0, small1] = turns.map(([one, two, three], at) => (word: bigint): bigint =>
    turn(word, one) ^ turn(word, two) ^ (at < 2 ? turn(word, three) : word >> BigInt(three)));
  type Mixer = (word: bigint) => bigint;
  let [a, b, c, d, e, f, g, h] = state as [bigint, bigint, bigint, bigint, bigint, bigint, bigint, bigint];
  for (let at = 0; at < rounds; at += 1) {
    if (at > 15) {
      const [back16, back15, back7, back2] = [16, 15, 7, 2].map((back) => words[at - back]) as [bigint, bigint, bigint, bigint];
      words.push(wrap((small1 as Mixer)(back2) + back7 + (small0 as Mixer)(back15) + back16));
    }
    const round = (ROUND[at] as bigint) >> BigInt(64 - bits);
    const one = h + (large1 as Mixer)(e) + ((e & f) ^ (wrap(~e) & g)) + round + (words[at] as bigint);
    const two = (large0 as Mixer)(a) + ((a & b) ^ (a & c) ^ (b & c));
    [a, b, c, d, e, f, g, h] = [wrap(one + two), a, b, c, wrap(d + one), e, f, g];
  }
  return [a, b, c, d, e, f, g, h];
}

/** The message as words: a bit of one after it, zeros, and its length in bits, so that blocks of sixteen come out. */
function padded(message: Uint8Array, size: number): bigint[] {
  const block = 16 * size;
  const bytes = new Uint8Array(Math.ceil((message.length + 1 + 2 * size) / block) * block);
  bytes.set(message);
  bytes[message.length] = 0x80;
  bytes.set(bytesOf(BigInt(message.length) * 8n, 8), bytes.length - 8);
  const words: bigint[] = [];
  for (let at = 0; at < bytes.length; at += size) {
    words.push(bytes.subarray(at, at + size).reduce((word, byte) => (word << 8n) | BigInt(byte), 0n));
  }
  return words;
}

function bytesOf(word: bigint, size: number): number[] {
  return Array.from({ length: size }, (_, at) => Number((word >> BigInt(8 * (size - 1 - at))) & 0xffn));
}

function primes(count: number): bigint[] {
  const found: bigint[] = [];
  for (let number = 2n; found.length < count; number += 1n) {
    if (found.every((prime) => number % prime !== 0n)) found.push(number);
  }
  return found;
}

/** The first 64 bits after the point of a number's root, by Newton's method from above. */
function fraction(number: bigint, root: bigint): bigint {
  const target = number << (64n * root);
  let guess = 1n << 72n;
  for (;;) {
    const next = ((root - 1n) * guess + target / guess ** (root - 1n)) / root;
    if (next >= guess) return BigInt.asUintN(64, guess);
    guess = next;
  }
}
