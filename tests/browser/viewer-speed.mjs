// How long a buyer waits: from the digits of a card of 200 visits to its first painted frame, decoded and verified,
// and to the frame that has all of it, in Chromium slowed to a quarter of its speed. Not a test, because a busy machine
// would fail it:
//
//     node browser/viewer-speed.mjs [ROUNDS]        after `npm run viewer:build` in ui/
import { createPrivateKey, createPublicKey, sign } from 'node:crypto';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { browser } from './support.mjs';

const VIEWER = pathToFileURL(join(import.meta.dirname, '../../ui/viewer/dist/index.html')).href;
const VISITS = 200;
const SLOWED = 4;
const ROUNDS = Number(process.argv[2] ?? 21);

/** The secret key of RFC 8032, section 7.1, test 1, in the frame of RFC 8410 that OpenSSL asks for. */
const SECRET = '302e020100300506032b6570042204209d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60';

await main();

async function main() {
  const digits = card();
  const chromium = await browser();
  try {
    const page = await chromium.newPage({ viewport: { width: 360, height: 740 } });
    const session = await page.context().newCDPSession(page);
    for (const rate of [SLOWED, 1]) {
      await session.send('Emulation.setCPUThrottlingRate', { rate });
      const times = [];
      for (let round = 0; round < ROUNDS; round += 1) times.push(await once(page, digits));
      report(rate, times);
    }
  } finally {
    await chromium.close();
  }
}

/** On a page that is loaded anew, since a buyer opens one card. */
async function once(page, digits) {
  await page.goto('about:blank');
  await page.goto(VIEWER);
  await page.locator('h1').waitFor();
  return page.evaluate(toPaint, digits);
}

function report(rate, times) {
  for (const [place, what] of ['first paint', 'all of it'].entries()) {
    const sorted = times.map((pair) => pair[place]).sort((one, other) => one - other);
    const at = (share) => sorted[Math.floor(share * (sorted.length - 1))].toFixed(0);
    console.log(`slowed ${rate} times, ${VISITS} visits, ${what}: median ${at(0.5)} ms of ${times.length}, from ${at(0)} to ${at(1)} ms`);
  }
}

/** Runs in the page: the times until the first frame with the card has been painted, and one with all visits. */
async function toPaint(digits) {
  const start = performance.now();
  const painted = (there) => new Promise((done) => {
    new MutationObserver((_, observer) => {
      if (!there()) return;
      observer.disconnect();
      // The task with the highest priority after the frame: what the page leaves for later comes after it.
      requestAnimationFrame(() => scheduler.postTask(() => done(performance.now() - start), { priority: 'user-blocking' }));
    }).observe(document.body, { attributes: true, childList: true, subtree: true });
  });
  const both = [painted(() => document.querySelector('.proof')), painted(() => document.querySelector('.visits'))];
  location.hash = digits;
  return Promise.all(both);
}

/** A card as the card code, version 1, has it, written with Node's own parts. */
function card() {
  const key = createPrivateKey({ key: Buffer.from(SECRET, 'hex'), format: 'der', type: 'pkcs8' });
  const publicKey = createPublicKey(key).export({ format: 'der', type: 'spki' }).subarray(-32);
  const header = cbor(new Map([[1, -8], [4, publicKey]]));
  const payload = deflateRawSync(cbor(claims()), { level: 9 });
  const signature = sign(null, cbor(['Signature1', header, Buffer.alloc(0), payload]), key);
  return digitsOf(Buffer.concat([Buffer.from([1, 0xd2]), cbor([header, new Map(), payload, signature])]));
}

/** A plainly invented car; a visit every five to ten weeks with one to four items. */
function claims() {
  const visits = Array.from({ length: VISITS }, (_, at) => {
    const items = Array.from({ length: 1 + (at % 4) }, (_, item) => 1 + ((at * 7 + item * 11) % 60));
    return [at === 0 ? 12_400 : 36 + ((at * 37) % 30), 310 + ((at * 997) % 1_400), [5, 6, 1, 38, 17][at % 5], ...items];
  });
  const sum = (place) => visits.reduce((total, visit) => total + visit[place], 0);
  return new Map([
    [1, sum(0) + 20],
    [3, new Map([[1, 'The green estate'], [2, '1M8GDM9AXKP042788'], [3, 1], [4, 'Invented Wagon 1.6, 2003']])],
    [4, 0],
    [5, [sum(0) + 9, sum(1) + 400]],
    [6, visits],
    [7, VISITS],
    [9, [[1, sum(0) + 200, sum(1) + 9_000], [10, sum(0) + 300, null]]],
  ]);
}

/** Deterministic CBOR (RFC 8949, section 4.2.1) of what a card holds; maps are given in order. */
function cbor(value) {
  if (value === null) return Buffer.from([0xf6]);
  if (typeof value === 'number') return value < 0 ? head(1, -1 - value) : head(0, value);
  if (typeof value === 'string') return Buffer.concat([head(3, Buffer.byteLength(value)), Buffer.from(value)]);
  if (value instanceof Uint8Array) return Buffer.concat([head(2, value.length), value]);
  if (value instanceof Map) return Buffer.concat([head(5, value.size), ...[...value].flat().map(cbor)]);
  return Buffer.concat([head(4, value.length), ...value.map(cbor)]);
}

function head(major, argument) {
  const start = major << 5;
  if (argument < 24) return Buffer.from([start + argument]);
  if (argument < 0x100) return Buffer.from([start + 24, argument]);
  if (argument < 0x1_0000) return Buffer.from([start + 25, argument >> 8, argument & 255]);
  return Buffer.from([start + 26, argument >>> 24, (argument >> 16) & 255, (argument >> 8) & 255, argument & 255]);
}

/** Each 7 bytes as 17 digits; a shorter last group as 3, 5, 8, 10, 13 or 15. */
function digitsOf(bytes) {
  const groups = Array.from({ length: Math.ceil(bytes.length / 7) }, (_, at) => bytes.subarray(at * 7, at * 7 + 7));
  return groups.map((group) => BigInt(`0x${group.toString('hex')}`).toString().padStart([0, 3, 5, 8, 10, 13, 15, 17][group.length], '0')).join('');
}
