import { deflateRawSync } from 'node:zlib';
import { getPublicKey } from '@noble/ed25519';
import { describe, expect, it } from 'vitest';

import { readClaims } from './claims';
import { concatenate } from './cose';
import { toDigits } from './digits';
import { digitsIn, readCard } from './read';
import { byteString, cardDigits, hex, outcome, vector } from './test-card';

const CLAIMS = hex(vector.claims_cbor);

describe('the vector', () => {
  it('is shown', async () => {
    const { claims } = await readCard(vector.digits);
    expect(claims).toEqual(readClaims(CLAIMS));
    expect(claims.vehicle.name).toBe('Blue estate');
  });

  it('is what our own signing of its claims gives, but for the compressor', async () => {
    const payload = hex(vector.message).slice(45, 45 + 187);
    expect(cardDigits(CLAIMS, { payload })).toBe(vector.digits);
  });

  it('shows the key by the first 8 bytes of its SHA-256', async () => {
    // sha256sum of the 32 bytes of RFC 8032, section 7.1, test 1.
    expect((await readCard(vector.digits)).fingerprint).toBe('21fe 31df a154 a261');
  });

  it('is refused with any one digit changed to any other', async () => {
    const { digits } = vector;
    for (let at = 0; at < digits.length; at += 1) {
      for (let by = 1; by < 10; by += 1) {
        const changed = `${digits.slice(0, at)}${(Number(digits[at]) + by) % 10}${digits.slice(at + 1)}`;
        expect(await outcome(changed), `digit ${at} raised by ${by}`).toMatch(/digits-form|version|message|signature/);
      }
    }
  }, 200_000);

  it('is refused cut short, and with digits after it', async () => {
    for (const digits of [vector.digits.slice(0, -1), vector.digits.slice(0, -17), vector.digits.slice(1), `${vector.digits}000`]) {
      expect(await outcome(digits)).not.toBe('shown');
    }
  });
});

describe('each step refuses for itself', () => {
  it.each([
    ['digits-form', ''],
    ['digits-form', '12'],
    ['digits-form', `${vector.digits.slice(0, -1)}x`],
    ['version', cardDigits(CLAIMS, { version: 0 })],
    ['version', cardDigits(CLAIMS, { version: 2 })],
    ['message', cardDigits(CLAIMS, { after: [0] })],
    ['message', cardDigits(CLAIMS, { tag: 17 })],
    ['message', cardDigits(CLAIMS, { unprotected: [0xa1, 0x04, 0x41, 0x00] })],
    ['message', cardDigits(CLAIMS, { unprotected: [0xb8, 0x00] })],
    ['message', cardDigits(CLAIMS, { header: concatenate([hex('a3012704582000')]) })],
    ['message', cardDigits(CLAIMS, { header: concatenate([hex('a2012604 5820'.replace(' ', '')), new Uint8Array(32)]) })],
    ['signature', cardDigits(CLAIMS, { signature: new Uint8Array(63) })],
    ['signature', cardDigits(CLAIMS, { key: getPublicKey(new Uint8Array(32).fill(7)) })],
    ['stream', cardDigits(CLAIMS, { payload: concatenate([deflateRawSync(CLAIMS), [0]]) })],
    ['stream', cardDigits(CLAIMS, { payload: deflateRawSync(CLAIMS).subarray(0, -1) })],
    ['stream', cardDigits(CLAIMS, { payload: deflateRawSync(new Uint8Array(10_000_000)) })],
    ['stream', cardDigits(CLAIMS, { payload: new Uint8Array() })],
    ['claims', cardDigits(concatenate([CLAIMS, [0]]))],
    ['claims', cardDigits(new Uint8Array(1_000).fill(0x81))],
    ['claims', cardDigits(hex('80'))],
  ])('%s', async (fault, digits) => {
    expect(await outcome(digits)).toBe(fault);
  });

  it('signature, when it belongs to another card of the same key', async () => {
    const other = concatenate([CLAIMS.subarray(0, -1), [0x29]]);
    const signature = hex(vector.message).slice(-64);
    expect(await outcome(cardDigits(other, { signature }))).toBe('signature');
    expect(await outcome(cardDigits(other))).toBe('shown');
  });

  it('message, when the payload is detached', async () => {
    const [, , ...rest] = hex(vector.message);
    const header = Uint8Array.from(rest).slice(2, 40);
    const detached = concatenate([[1, 0xd2, 0x84], byteString(header), [0xa0, 0xf6], byteString(new Uint8Array(64))]);
    expect(await outcome(toDigits(detached))).toBe('message');
  });
});

it('finds the digits in what someone pasted', () => {
  expect(digitsIn('https://card.example/v#0051\n 2940\t8')).toBe('005129408');
  expect(digitsIn('  00512 \r\n')).toBe('00512');
  expect(digitsIn('https://card.example/')).toBe('https://card.example/');
});
