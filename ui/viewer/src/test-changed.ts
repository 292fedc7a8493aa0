// For the tests: real codes, and what becomes of them when something is changed at random. The core's `changed` module
// does the very same, step by step; whoever changes one changes the other.

import { createPrivateKey, sign } from 'node:crypto';
import { readFileSync } from 'node:fs';

import { concatenate } from './cose';
import { toDigits } from './digits';
import { byteString, hex, vector } from './test-card';

const TESTS = new URL('../../../src-tauri/crates/card/tests/', import.meta.url);

/** The least card with one more claim, which no reader knows; its value follows. */
const LEAST = hex('a5010103a10161610582010006801863');

/** What may stand in a code, and what may not; the last is a digit elsewhere (Arabic-Indic three). */
const CHARACTERS = [...'0123456789x -\u0663'];

/** The vector's key in the frame of RFC 8410, for OpenSSL by way of Node, which signs fast. */
const KEY = createPrivateKey({ key: Buffer.from(`302e020100300506032b657004220420${vector.secret_key}`, 'hex'), format: 'der', type: 'pkcs8' });

const cases = parsed('agree-cases.json') as { readonly values: string[]; readonly streams: string[] };
const histories = parsed('questions-vector.json') as ReadonlyArray<{ readonly claims: string }>;
const VALUES = cases.values.map(bytes);
const STREAMS = cases.streams.map(bytes);
const CLAIMS = [vector.claims_cbor, ...histories.map(({ claims }) => claims)].map(bytes);

/** The examples, then so many codes that are changed at random. */
export function* codes(random: number): Generator<string> {
  for (const value of VALUES) yield toDigits(concatenate([[1], value]));
  for (const value of VALUES) yield toDigits(sealed(stored(concatenate([LEAST, value]))));
  for (const stream of STREAMS) yield toDigits(sealed(stream));
  for (let at = 0; at < random; at += 1) yield changed(at);
}

/** A code changed in one of four places. */
function changed(at: number): string {
  const dice = new Dice((Math.imul(at, 2_654_435_761) + 1) >>> 0);
  const kind = dice.below(4);
  const claims = [...(CLAIMS[dice.below(CLAIMS.length)] as Uint8Array)];
  const stream = [...(STREAMS[dice.below(STREAMS.length)] as Uint8Array)];
  switch (kind) {
    case 0:
      return dice.changeText(toDigits(sealed(stored(claims))));
    case 1: {
      const packed = [...sealed(stored(claims))];
      dice.change(packed);
      return toDigits(Uint8Array.from(packed));
    }
    case 2:
      dice.change(stream);
      return toDigits(sealed(stream));
    default:
      dice.change(claims);
      return toDigits(sealed(stored(claims)));
  }
}

/** Version byte and signed message around a payload, byte by byte as the card code has them. */
function sealed(payload: ArrayLike<number>): Uint8Array {
  const header = byteString(concatenate([hex('a20127045820'), hex(vector.public_key)]));
  const content = byteString(Uint8Array.from(payload));
  const signed = concatenate([[0x84, 0x6a], new TextEncoder().encode('Signature1'), header, [0x40], content]);
  return concatenate([[1, 0xd2, 0x84], header, [0xa0], content, byteString(sign(null, signed, KEY))]);
}

/** A linear congruential generator (Numerical Recipes' constants, from memory). */
class Dice {
  constructor(private state: number) {}

  below(bound: number): number {
    this.state = (Math.imul(this.state, 1_664_525) + 1_013_904_223) >>> 0;
    return (this.state >>> 8) % bound;
  }

  /** One to three changes: a bit turned, a byte put in place of another, one put in, one taken out. */
  change(bytes: number[]): void {
    for (let count = this.below(3); count >= 0; count -= 1) {
      const [how, at, byte] = [this.below(4), this.below(Math.max(bytes.length, 1)), this.below(256)];
      if (bytes.length === 0) bytes.push(byte);
      else if (how === 0) bytes[at] = (bytes[at] as number) ^ (1 << (byte & 7));
      else if (how === 1) bytes[at] = byte;
      else if (how === 2) bytes.splice(at, 0, byte);
      else bytes.splice(at, 1);
    }
  }

  /** The same in characters, and the end cut off in place of one taken out. */
  changeText(code: string): string {
    const text = [...code];
    for (let count = this.below(3); count >= 0; count -= 1) {
      const [how, at] = [this.below(4), this.below(Math.max(text.length, 1))];
      const character = CHARACTERS[this.below(CHARACTERS.length)] as string;
      if (how < 2 && at < text.length) text[at] = character;
      else if (how === 2) text.splice(at, 0, character);
      else text.length = Math.max(text.length - 1 - (at % 20), 0);
    }
    return text.join('');
  }
}

/** DEFLATE without compression: one stored block (RFC 1951, section 3.2.4). */
function stored(bytes: ArrayLike<number>): Uint8Array {
  const { length } = bytes;
  const other = length ^ 0xffff;
  return concatenate([[1, length & 255, length >> 8, other & 255, other >> 8], bytes]);
}

/** Hexadecimal, where `N*XX` stands for XX as many times and blanks for nothing. */
function bytes(text: string): Uint8Array {
  return hex(text.replace(/(\d+)\*(\w+)/g, (_, times, part) => part.repeat(Number(times))).replace(/ /g, ''));
}

function parsed(name: string): unknown {
  return JSON.parse(readFileSync(new URL(name, TESTS), 'utf8'));
}
