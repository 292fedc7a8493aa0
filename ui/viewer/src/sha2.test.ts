import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';

import { sha256, sha512 } from './sha2';
import { toHex } from './test-card';

const text = (said: string): Uint8Array => new TextEncoder().encode(said);

// FIPS 180-4's own examples, "abc" and the text of two blocks (NIST, Secure Hash Standard, example values; from memory).
describe('the examples of the standard', () => {
  it('of SHA-256', () => {
    expect(toHex(sha256(text('abc')))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    const two = 'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq';
    expect(toHex(sha256(text(two)))).toBe('248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1');
  });

  it('of SHA-512', () => {
    const abc = 'ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f';
    expect(toHex(sha512(text('abc')))).toBe(abc);
  });
});

// OpenSSL by way of Node.
it.each([['sha256', sha256], ['sha512', sha512]] as const)('%s agrees with OpenSSL at every length up to three blocks', (name, ours) => {
  for (let length = 0; length <= 400; length += 1) {
    const message = Uint8Array.from({ length }, (_, at) => (at * 167 + length * 59) & 255);
    expect(toHex(ours(message)), `${length} bytes`).toBe(createHash(name).update(message).digest('hex'));
  }
  const long = new Uint8Array(20_000).fill(0xa5);
  expect(toHex(ours(long))).toBe(createHash(name).update(long).digest('hex'));
});
