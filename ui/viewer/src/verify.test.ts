import { Point } from '@noble/ed25519';
import { sha512 } from '@noble/hashes/sha2.js';
import { describe, expect, it } from 'vitest';

import { concatenate } from './cose';
import { hex } from './test-card';
import { byBrowser, byLibrary, type Verifier, verify } from './verify';

const L = Point.CURVE().n;

// RFC 8032, section 7.1: public key, message, signature.
const VECTORS = [
  ['d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a', '', 'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b'],
  ['3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c', '72', '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00'],
  ['fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025', 'af82', '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a'],
  ['ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf', Buffer.from(sha512(new TextEncoder().encode('abc'))).toString('hex'), 'dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704'],
] as const;

// The points of order 1, 2, 4 and 8 in all encodings, canonical or not (RFC 8032, section 5.1.3, decides which are).
const P = 2n ** 255n - 19n;
const ORDER_8 = Point.fromHex('26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05');
const SMALL_ORDER = [...Array(8).keys()].map((n) => ORDER_8.multiply(BigInt(n), false).toBytes());
const OTHER_ENCODINGS = [1n + 2n ** 255n, P - 1n + 2n ** 255n, P, P + 2n ** 255n, P + 1n, P + 1n + 2n ** 255n].map(to32);

describe.each([['the browser', byBrowser], ['the library', byLibrary]] as const)('by %s', (_, verifier) => {
  const check = (key: Uint8Array, message: Uint8Array, signature: Uint8Array): Promise<boolean> =>
    verify(key, message, signature, [answering(verifier)]);

  it.each(VECTORS)('RFC 8032, key %s', async (key, message, signature) => {
    expect(await check(hex(key), hex(message), hex(signature))).toBe(true);
  });

  it('one bit of key, message or signature turned', async () => {
    const [key, message, signature] = VECTORS[2].map(hex) as [Uint8Array, Uint8Array, Uint8Array];
    for (let bit = 0; bit < 8; bit += 1) {
      expect(await check(turned(key, bit * 29), message, signature)).toBe(false);
      expect(await check(key, turned(message, bit * 2), signature)).toBe(false);
      expect(await check(key, message, turned(signature, bit * 63))).toBe(false);
    }
  });

  it('S + L, which a lax verifier takes for S', async () => {
    const [key, message, signature] = VECTORS[1].map(hex) as [Uint8Array, Uint8Array, Uint8Array];
    const s = fromLittleEndian(signature.subarray(32));
    for (let times = 1n; s + times * L < 2n ** 256n; times += 1n) {
      expect(await check(key, message, concatenate([signature.subarray(0, 32), to32(s + times * L)]))).toBe(false);
    }
  });

  it('keys and points of small order, under which every message has a signature', async () => {
    const zero = new Uint8Array(32);
    for (const point of [...SMALL_ORDER, ...OTHER_ENCODINGS]) {
      for (const r of [...SMALL_ORDER, ...OTHER_ENCODINGS]) {
        expect(await check(point, hex('72'), concatenate([r, zero]))).toBe(false);
      }
    }
  });

  it('R of small order under an honest key', async () => {
    const secret = 12_345n;
    const key = Point.BASE.multiply(secret).toBytes();
    const r = Point.ZERO.toBytes();
    const s = (challenge(r, key, hex('72')) * secret) % L;
    expect(await check(key, hex('72'), concatenate([r, to32(s)]))).toBe(false);
  });

  it('R with a part of small order, which only the equation with the cofactor takes', async () => {
    const secret = 12_345n;
    const key = Point.BASE.multiply(secret).toBytes();
    const r = Point.BASE.multiply(777n).add(ORDER_8).toBytes();
    const s = (777n + challenge(r, key, hex('72')) * secret) % L;
    expect(await check(key, hex('72'), concatenate([r, to32(s)]))).toBe(false);
  });

  it('a key with a part of small order, as the equation without the cofactor has it', async () => {
    const secret = 12_345n;
    const key = Point.BASE.multiply(secret).add(ORDER_8).toBytes();
    const verdicts: boolean[] = [];
    for (let nonce = 1n; nonce <= 64n; nonce += 1n) {
      const r = Point.BASE.multiply(nonce).toBytes();
      const k = challenge(r, key, hex('72'));
      const verdict = await check(key, hex('72'), concatenate([r, to32((nonce + k * secret) % L)]));
      expect(verdict).toBe(k % 8n === 0n);
      verdicts.push(verdict);
    }
    expect(verdicts).toContain(true);
    expect(verdicts).toContain(false);
  });

  it('signatures of another length', async () => {
    const [key, message, signature] = VECTORS[0].map(hex) as [Uint8Array, Uint8Array, Uint8Array];
    expect(await check(key, message, signature.subarray(0, 63))).toBe(false);
    expect(await check(key, message, concatenate([signature, [0]]))).toBe(false);
    expect(await check(key, message, new Uint8Array())).toBe(false);
  });
});

it('asks the library when the browser cannot tell, and trusts nobody when none can', async () => {
  const [key, message, signature] = VECTORS[0].map(hex) as [Uint8Array, Uint8Array, Uint8Array];
  const cannotTell: Verifier = () => Promise.resolve(null);
  expect(await verify(key, message, signature, [cannotTell, byLibrary])).toBe(true);
  expect(await verify(key, message, signature, [cannotTell])).toBe(false);
});

/** A verifier that must answer, so that no test passes because one could not tell. */
function answering(verifier: Verifier): Verifier {
  return async (...what) => {
    const verdict = await verifier(...what);
    if (verdict === null) throw new Error('the verifier could not tell');
    return verdict;
  };
}

function challenge(r: Uint8Array, key: Uint8Array, message: Uint8Array): bigint {
  return fromLittleEndian(sha512(concatenate([r, key, message]))) % L;
}

function turned(bytes: Uint8Array, bit: number): Uint8Array {
  const other = bytes.slice();
  other[bit >> 3] = (other[bit >> 3] as number) ^ (1 << (bit & 7));
  return other;
}

function to32(value: bigint): Uint8Array {
  return Uint8Array.from({ length: 32 }, (_, at) => Number((value >> BigInt(8 * at)) & 255n));
}

function fromLittleEndian(bytes: Uint8Array): bigint {
  return bytes.reduceRight((value, byte) => (value << 8n) | BigInt(byte), 0n);
}
