// Ed25519 (RFC 8032), verified strictly and the same everywhere.
//
// Verifiers differ on signatures that no honest signer makes: S at or above the group order, points of small order,
// points written in another than their one encoding. Those are refused here, before any verifier is asked. What
// remains is the equation [S]B = R + [k]A without the cofactor, which the Web Cryptography API prescribes
// (Secure Curves, section on Ed25519) and which the library's points compute where that API is absent: on plain
// http, and in older browsers.

import { Point } from '@noble/ed25519';

import { concatenate } from './cose';
import { sha512 } from './sha2';

/** A verifier of messages whose key and signature are strict already; null when it cannot tell. */
export type Verifier = (key: Uint8Array, message: Uint8Array, signature: Uint8Array) => Promise<boolean | null>;

/** Whether `signature` is the key's strict signature of `message`. */
export async function verify(
  key: Uint8Array,
  message: Uint8Array,
  signature: Uint8Array,
  verifiers: readonly Verifier[] = [byBrowser, byLibrary],
): Promise<boolean> {
  if (!isStrict(key, signature)) return false;
  for (const verifier of verifiers) {
    const verdict = await verifier(key, message, signature);
    if (verdict !== null) return verdict;
  }
  return false;
}

/** The browser's own verifier; null where it has none, or none that knows Ed25519. */
export const byBrowser: Verifier = async (key, message, signature) => {
  // On plain http the types promise an object that is not there.
  const subtle = globalThis.crypto?.subtle as SubtleCrypto | undefined;
  if (subtle === undefined) return null;
  try {
    const imported = await subtle.importKey('raw', key.slice(), 'Ed25519', false, ['verify']);
    return await subtle.verify('Ed25519', imported, signature.slice(), message.slice());
  } catch {
    return null;
  }
};

/** The equation of RFC 8032, section 5.1.7, step 3, in the form without the cofactor. */
export const byLibrary: Verifier = (key, message, signature) => {
  const k = littleEndian(sha512(concatenate([signature.subarray(0, 32), key, message]))) % Point.CURVE().n;
  const sB = Point.BASE.multiply(scalarOf(signature), false);
  const kA = Point.fromBytes(key).multiply(k, false);
  const expected = sB.subtract(kA).toBytes();
  return Promise.resolve(expected.every((byte, at) => byte === signature[at]));
};

function isStrict(key: Uint8Array, signature: Uint8Array): boolean {
  return (
    signature.length === 64 &&
    scalarOf(signature) < Point.CURVE().n &&
    isStrictPoint(key) &&
    isStrictPoint(signature.subarray(0, 32))
  );
}

/** Whether bytes are the one encoding of a point on the curve (RFC 8032, section 5.1.3) that is not of small order. */
function isStrictPoint(bytes: Uint8Array): boolean {
  try {
    return !Point.fromBytes(bytes).isSmallOrder();
  } catch {
    return false;
  }
}

function scalarOf(signature: Uint8Array): bigint {
  return littleEndian(signature.subarray(32));
}

function littleEndian(bytes: Uint8Array): bigint {
  return bytes.reduceRight((value, byte) => (value << 8n) | BigInt(byte), 0n);
}
