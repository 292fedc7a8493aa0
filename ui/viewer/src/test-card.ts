// For the tests: the published vector, and cards of any content, signed by its key or another.

import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import { getPublicKey, hashes, sign } from '@noble/ed25519';
import { sha512 } from '@noble/hashes/sha2.js';

import { concatenate, toBeSigned } from './cose';
import { toDigits } from './digits';
import { readCard } from './read';
import { Refusal } from './refusal';

hashes.sha512 = sha512;

/** Made with cbor2, zlib and PyNaCl, not with this project; the file says so itself. */
const VECTOR_FILE = new URL('../../../src-tauri/crates/card/tests/card-code-vector.json', import.meta.url);

interface Vector {
  readonly secret_key: string;
  readonly public_key: string;
  readonly claims_cbor: string;
  readonly message: string;
  readonly packed: string;
  readonly digits: string;
  readonly tail_cases: Readonly<Record<string, string>>;
}

export const vector = JSON.parse(readFileSync(VECTOR_FILE, 'utf8')) as Vector;

export function hex(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(text.match(/../g) ?? [], (pair) => parseInt(pair, 16));
}

export function toHex(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('hex');
}

/** What can be made otherwise than a card asks for. */
export interface Twist {
  readonly secretKey?: Uint8Array;
  readonly payload?: Uint8Array;
  readonly key?: Uint8Array;
  readonly signature?: Uint8Array;
  readonly header?: Uint8Array;
  readonly unprotected?: number[];
  readonly tag?: number;
  readonly version?: number;
  readonly after?: number[];
}

/** The digits of a card with these claims, signed, with whatever twist. */
export function cardDigits(claims: Uint8Array, twist: Twist = {}): string {
  const secretKey = twist.secretKey ?? hex(vector.secret_key);
  const key = twist.key ?? getPublicKey(secretKey);
  const header = twist.header ?? concatenate([[0xa2, 1, 0x27, 4, 0x58, 0x20], key]);
  const payload = twist.payload ?? deflateRawSync(claims);
  const signature = twist.signature ?? sign(toBeSigned({ header, key, payload, signature: new Uint8Array() }), secretKey);
  const fields = [byteString(header), twist.unprotected ?? [0xa0], byteString(payload), byteString(signature)];
  return toDigits(concatenate([[twist.version ?? 1, 0xc0 + (twist.tag ?? 18), 0x84], ...fields, twist.after ?? []]));
}

/** Bytes as a CBOR byte string. */
export function byteString(bytes: Uint8Array): Uint8Array {
  const { length } = bytes;
  const head = length < 24 ? [0x40 + length] : length < 256 ? [0x58, length] : length < 65_536 ? [0x59, length >> 8, length & 255] : [0x5a, 0, length >> 16, (length >> 8) & 255, length & 255];
  return concatenate([head, bytes]);
}

/** At which step a card is refused, or `shown`. */
export async function outcome(digits: string): Promise<string> {
  try {
    await readCard(digits);
    return 'shown';
  } catch (error) {
    if (error instanceof Refusal) return error.fault;
    throw error;
  }
}
