// This reader and the core's take and refuse the very same codes, at the same step, and read the same out of them. The
// core's test writes what it says of each; with WELLKEPT_AGREE_CASES set, run its test first, then this one.

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

import { type Claims, ENGINES, FLAGS, type Item } from './claims';
import { questions } from './questions';
import { hexGroups, readCard } from './read';
import { type Fault, Refusal } from './refusal';
import { codes } from './test-changed';

const ROOT = new URL('../../../', import.meta.url);
const LINE = 100;
const LETTERS: Readonly<Record<Fault, string>> = { 'digits-form': 'd', version: 'v', message: 'm', signature: 's', stream: 'z', claims: 'c' };

it('both readers say the same of 20 000 codes', async () => {
  await agree(20_000, new URL('src-tauri/crates/card/tests/agree-vector.txt', ROOT));
}, 600_000);

const more = process.env['WELLKEPT_AGREE_CASES'];
it.runIf(more)('and of as many as are asked for', async () => {
  await agree(Number(more), new URL('target/tmp/agree.txt', ROOT));
}, 100_000_000);

async function agree(random: number, file: URL): Promise<void> {
  const expected = readFileSync(file, 'utf8').trimEnd().split('\n');
  let [line, letters, sum, made] = [0, '', 0, ''];
  const check = (): void => {
    const said = `${letters} ${sum.toString(16).padStart(8, '0')}`;
    expect(said, `line ${line + 1}, the last of it ${made.slice(-200)}`).toBe(expected[line]);
    [line, letters, sum] = [line + 1, '', 0];
  };
  for (const code of codes(random)) {
    const [letter, hash] = await end(code);
    [letters, sum, made] = [letters + letter, (((sum << 5) | (sum >>> 27)) ^ hash) >>> 0, code];
    if (letters.length === LINE) check();
  }
  if (letters !== '') check();
  expect(line).toBe(expected.length);
}

/** A letter for the step at which a code is refused, or `+` with a hash of what the card says. */
async function end(code: string): Promise<readonly [string, number]> {
  try {
    return ['+', hash(said((await readCard(code)).claims))];
  } catch (error) {
    if (error instanceof Refusal) return [LETTERS[error.fault], 0];
    throw error;
  }
}

/** Everything that a card says, as one text that both readers write alike. */
function said(claims: Claims): string {
  const { vehicle, latest } = claims;
  const facts = [
    claims.issued,
    vehicle.name,
    vehicle.vin ?? '-',
    vehicle.engine === undefined ? '-' : ENGINES.indexOf(vehicle.engine),
    vehicle.description ?? '-',
    vehicle.firstUse ?? '-',
    claims.unit,
    `${latest.day} ${latest.reading}`,
    claims.leftOut,
    claims.head === undefined ? '' : hexGroups(claims.head).replace(/ /g, ''),
    questions(claims, claims.issued).map(({ kind }) => kind).join(','),
  ];
  const visits = claims.visits.map(({ day, reading, flags, items }) => {
    const sum = FLAGS.reduce((sum, flag, bit) => sum + (flags.has(flag) ? 1 << bit : 0), 0);
    return `${day} ${reading} ${sum} ${items.map(named).join(',')}`;
  });
  const next = claims.next.map(({ item, day, reading }) => `${named(item)} ${day ?? '-'} ${reading ?? '-'}`);
  const instruments = claims.instruments.map(({ day, oldReading, newReading }) => `${day} ${oldReading} ${newReading}`);
  return [...facts, ...visits, ...next, ...instruments].join('\n');
}

function named(item: Item): string {
  return typeof item === 'string' ? `'${item}` : String(item);
}

/** FNV-1a in 32 bits (from memory); it need only tell two texts apart. */
function hash(text: string): number {
  return new TextEncoder().encode(text).reduce((hash, byte) => Math.imul(hash ^ byte, 0x0100_0193) >>> 0, 0x811c_9dc5);
}
