// Bytes as decimal digits: each 7 bytes, big endian, as 17 digits; a shorter last group by the table below.

import { Refusal } from './refusal';

const GROUP_DIGITS = 17;

/** How many digits stand for a group of so many bytes. */
const DIGITS = [0, 3, 5, 8, 10, 13, 15, GROUP_DIGITS] as const;

/** The bytes for which `digits` stand. Throws a Refusal when the digits are out of form. */
export function fromDigits(digits: string): Uint8Array<ArrayBuffer> {
  if (!/^[0-9]+$/.test(digits)) {
    throw refused('something other than decimal digits');
  }
  const tail = DIGITS.indexOf((digits.length % GROUP_DIGITS) as (typeof DIGITS)[number]);
  if (tail < 0) {
    throw refused('a number of digits that no card has');
  }
  const bytes = new Uint8Array(Math.floor(digits.length / GROUP_DIGITS) * 7 + tail);
  for (let at = 0, byte = 0; at < digits.length; at += GROUP_DIGITS, byte += 7) {
    writeGroup(digits.slice(at, at + GROUP_DIGITS), bytes.subarray(byte, byte + 7));
  }
  return bytes;
}

/** The digits that stand for `bytes`. */
export function toDigits(bytes: Uint8Array): string {
  let digits = '';
  for (let at = 0; at < bytes.length; at += 7) {
    const group = bytes.subarray(at, at + 7);
    let value = 0n;
    for (const byte of group) value = (value << 8n) | BigInt(byte);
    digits += value.toString().padStart(DIGITS[group.length] ?? GROUP_DIGITS, '0');
  }
  return digits;
}

/** 17 digits pass the range in which a plain number counts exactly, so the group is held as a BigInt. */
function writeGroup(group: string, bytes: Uint8Array): void {
  let value = BigInt(group);
  for (let at = bytes.length - 1; at >= 0; at -= 1) {
    bytes[at] = Number(value & 0xffn);
    value >>= 8n;
  }
  if (value !== 0n) {
    throw refused('a group of digits too large for its bytes');
  }
}

function refused(what: string): Refusal {
  return new Refusal('digits-form', `the code holds ${what}`);
}
