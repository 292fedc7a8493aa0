// From the digits of a square to what the card says: digits, version, message, signature, stream, claims, in this order.

import { type Claims, readClaims } from './claims';
import { openMessage, toBeSigned } from './cose';
import { fromDigits } from './digits';
import { inflate } from './inflate';
import { Refusal } from './refusal';
import { sha256 } from './sha2';
import { verify } from './verify';

/** A card whose signature verified. */
export interface Card {
  readonly claims: Claims;
  /** The short form of the signer's key: four groups of four hexadecimal digits. */
  readonly fingerprint: string;
}

const VERSION = 1;

/** Reads a card. Throws a Refusal at the first fault. */
export async function readCard(digits: string): Promise<Card> {
  const message = openMessage(withoutVersion(fromDigits(digits)));
  if (!(await verify(message.key, toBeSigned(message), message.signature))) {
    throw new Refusal('signature', 'the signature does not verify');
  }
  return { claims: readClaims(inflate(message.payload)), fingerprint: fingerprint(message.key) };
}

/** The digits in what someone pasted: what follows the first `#`, or all of it; line breaks come from the clipboard. */
export function digitsIn(pasted: string): string {
  return pasted.slice(pasted.indexOf('#') + 1).replace(/\s+/g, '');
}

function withoutVersion(packed: Uint8Array): Uint8Array {
  if (packed[0] !== VERSION) throw new Refusal('version', `the code is of version ${packed[0]}`);
  return packed.subarray(1);
}

/** The first 8 bytes of SHA-256 of the key. */
function fingerprint(key: Uint8Array): string {
  return hexGroups(sha256(key).subarray(0, 8));
}

/** Bytes as groups of four hexadecimal digits. */
export function hexGroups(bytes: Uint8Array): string {
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/(.{4})(?=.)/g, '$1 ');
}
