// The signed message: COSE_Sign1 (RFC 9052, section 4.2), tag 18, with exactly the headers of a card.

import { CborError, CborMap, CborTag, decode } from './cbor';
import { Refusal } from './refusal';

/** A message in the form of a card, its signature not yet verified. */
export interface SignedMessage {
  /** The protected header as it stands in the message. */
  readonly header: Uint8Array;
  /** The signer's Ed25519 public key, 32 bytes. */
  readonly key: Uint8Array;
  /** The deflated claims. */
  readonly payload: Uint8Array;
  /** Whatever stands in the place of the signature. */
  readonly signature: Uint8Array;
}

const COSE_SIGN1 = 18;

/** `{1: -8, 4: KEY}` up to the key: a map of two, algorithm EdDSA, key id of 32 bytes. */
const HEADER_START = [0xa2, 0x01, 0x27, 0x04, 0x58, 0x20];
const KEY_LENGTH = 32;

/** Takes a message apart. Throws a Refusal when it is not of a card's form. */
export function openMessage(bytes: Uint8Array): SignedMessage {
  const fields = sign1Fields(bytes);
  const [header, unprotected, payload, signature] = fields;
  const formed =
    fields.length === 4 &&
    header instanceof Uint8Array &&
    unprotected instanceof CborMap &&
    unprotected.entries.length === 0 &&
    payload instanceof Uint8Array &&
    signature instanceof Uint8Array;
  if (!formed || !isCardHeader(header)) {
    throw new Refusal('message', 'the message is not signed in the form of a card');
  }
  return { header, key: header.slice(HEADER_START.length), payload, signature };
}

/** What the signature covers: the Sig_structure of RFC 9052, section 4.4, without external data. */
export function toBeSigned(message: SignedMessage): Uint8Array<ArrayBuffer> {
  const context = new TextEncoder().encode('Signature1');
  const parts = [
    [0x84, 0x60 + context.length, ...context],
    byteStringHead(message.header.length),
    message.header,
    [0x40],
    byteStringHead(message.payload.length),
    message.payload,
  ];
  return concatenate(parts);
}

/** One array of bytes after the other. */
export function concatenate(parts: ReadonlyArray<ArrayLike<number>>): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function sign1Fields(bytes: Uint8Array): readonly unknown[] {
  try {
    const value = decode(bytes);
    return value instanceof CborTag && value.tag === COSE_SIGN1 && Array.isArray(value.value) ? value.value : [];
  } catch (error) {
    if (error instanceof CborError) throw new Refusal('message', `the message holds ${error.message}`);
    throw error;
  }
}

function isCardHeader(header: Uint8Array): boolean {
  return header.length === HEADER_START.length + KEY_LENGTH && HEADER_START.every((byte, at) => header[at] === byte);
}

/** The head of a byte string (RFC 8949, section 3, major type 2) in its shortest form, up to 32 bits of length. */
function byteStringHead(length: number): number[] {
  if (length < 24) return [0x40 + length];
  if (length < 0x100) return [0x58, length];
  if (length < 0x1_0000) return [0x59, length >> 8, length & 0xff];
  return [0x5a, length >>> 24, (length >> 16) & 0xff, (length >> 8) & 0xff, length & 0xff];
}
