// Opens the built page in a real Chromium and holds it to what it promises: `npm run viewer:check [FOLDER]` after
// `npm run viewer:build`. Pictures go to FOLDER, or to a folder of the system's for passing files.

import assert from 'node:assert/strict';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';

import { chromium } from 'playwright-core';
import { runnerImport } from 'vite';

const HERE = fileURLToPath(new URL('.', import.meta.url));
const PAGE = `${HERE}dist/index.html`;
const PICTURES = process.argv[2] ?? mkdtempSync(`${tmpdir()}/viewer-`);
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync',
  '--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];

const { cardDigits, vector } = (await runnerImport(`${HERE}src/test-card.ts`)).module;
const { claimsOf } = (await runnerImport(`${HERE}src/test-claims.ts`)).module;

const CARD = cardDigits(claimsOf(14));
/** The invented histories that hold page and core to the same questions. */
const HISTORIES = JSON.parse(readFileSync(new URL('../../src-tauri/crates/card/tests/questions-vector.json', import.meta.url), 'utf8'));
const FILE = pathToFileURL(PAGE).href;

mkdirSync(PICTURES, { recursive: true });
const server = createServer((request, response) => {
  response.setHeader('content-type', 'text/html; charset=utf-8');
  response.end(request.url === '/' ? readFileSync(PAGE) : '');
}).listen(0, '127.0.0.1');
await once(server, 'listening');
const { port } = server.address();
const profile = mkdtempSync(`${tmpdir()}/viewer-profile-`);
const browser = await chromium.launchPersistentContext(profile, {
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [...FLAGS, '--host-resolver-rules=MAP card.example 127.0.0.1'],
});
try {
  await check('the vector, from a file', vectorFromFile);
  await check('one digit changed shows the sentence and nothing of the card', oneDigitChanged);
  await check('the browser\'s verifier and the library agree', bothVerifiers);
  await check('pasting', pasting);
  await check('what to ask, and the drawing', asking);
  await check('an older card held against the one on the page', comparing);
  await check('the camera', camera);
  await check('by keyboard alone', keyboard);
  await check('a card that tries to act', hostileCard);
  await check('cards of a size and depth that no car has', heavyCards);
  await check('the policy', policy);
  await check('looks and accessibility', looks);
  await check('every language', everyLanguage);
  await check('print', print);
} finally {
  await browser.close();
  server.close();
  rmSync(profile, { recursive: true, force: true });
}
console.log(`Pictures: ${PICTURES}`);

async function check(name, run) {
  const page = await browser.newPage();
  const requests = [];
  const faults = [];
  page.on('request', (request) => requests.push(request.url().split('#')[0]));
  page.on('console', (message) => faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('dialog', (dialog) => faults.push(`dialog ${dialog.message()}`));
  await run(page, faults);
  assert.deepEqual(requests.filter((url) => url !== FILE && !url.startsWith('data:') && new URL(url).pathname !== '/'), [], 'no request but for the page');
  assert.deepEqual(faults, [], 'nothing on the console');
  await page.close();
  console.log(`ok  ${name}`);
}

async function open(page, address) {
  // A change of fragment alone would not load the page anew.
  await page.goto('about:blank');
  await page.goto(address);
  await page.waitForSelector('h1');
  await page.waitForFunction(() => document.querySelector('[aria-busy]') === null);
  // What lies below the fold is laid out when it is scrolled to, but it is there to be read.
  return page.textContent('main');
}

/** Opens the page and chooses a language, whose name the choice then bears. */
async function openIn(page, address, tag) {
  await open(page, address);
  const heading = await page.locator('h1').first().elementHandle();
  await page.selectOption('select', tag);
  // The heading of the language before is gone; the same language chosen again changes nothing.
  if (tag !== 'en') await page.waitForFunction((heading) => !heading.isConnected, heading);
  await page.waitForFunction((tag) => document.documentElement.lang === tag && document.querySelector('[aria-busy]') === null, tag);
}

async function vectorFromFile(page) {
  const text = await open(page, `${FILE}#${vector.digits}`);
  assert.match(text, /Unchanged since it was signed on .*2026 with the key 21fe.31df.a154.a261\./);
  assert.match(text, /This does not prove that the work was done/);
  assert.ok(text.indexOf('Unchanged') < text.indexOf('Blue estate'), 'the proof comes first');
  for (const said of ['98,420 km', '1M8GDM9AXKP042788', 'tow bar wiring', 'Engine oil and filter', 'Timing chain', 'whichever comes first', 'started at 40 km']) {
    assert.ok(text.includes(said), said);
  }
}

async function oneDigitChanged(page) {
  for (const at of [3, 40, 400, vector.digits.length - 2]) {
    const changed = vector.digits.slice(0, at) + ((Number(vector.digits[at]) + 1) % 10) + vector.digits.slice(at + 1);
    const text = await open(page, `${FILE}#${changed}`);
    assert.match(text, /This card cannot be shown/);
    assert.doesNotMatch(text + (await page.title()), /Blue|estate|98,420|1M8/);
    assert.equal(await page.locator('section').count(), 1);
    assert.equal(await page.locator('textarea').count(), 1);
  }
}

/** Plain http to a host that is not this machine has no crypto.subtle; a file has. */
async function bothVerifiers(page) {
  const shown = [];
  for (const [address, native] of [[FILE, true], [`http://card.example:${port}/`, false]]) {
    shown.push(await open(page, `${address}#${vector.digits}`));
    assert.equal(await page.evaluate(() => globalThis.crypto?.subtle !== undefined), native);
    assert.match(await open(page, `${address}#${vector.digits.replace(/550$/, '551')}`), /cannot be shown/);
  }
  assert.equal(shown[0], shown[1]);
}

async function pasting(page) {
  assert.match(await open(page, FILE), /A car's history, on a card/);
  await page.fill('textarea', `  https://card.example/v#${vector.digits.replace(/(.{60})/g, '$1\n')}  `);
  await page.click('button');
  await page.waitForSelector('.proof');
  assert.equal(new URL(page.url()).hash, `#${vector.digits}`);
  await page.waitForFunction(() => document.activeElement.textContent === 'Signature verified');
  await page.click('footer a');
  await page.fill('textarea', 'nonsense');
  await page.click('button');
  await page.waitForSelector('.refusal');
  await page.goBack();
  await page.goBack();
  await page.waitForSelector('.proof');
}

async function asking(page) {
  const history = HISTORIES.find(({ name }) => name === 'a digit too many');
  const text = await open(page, `${FILE}#${cardDigits(Buffer.from(history.claims, 'hex'))}`);
  assert.match(text, /falls from 480,000 km on .*2022 to 60,000 km on .*2023/);
  assert.match(text, /Visits with a receipt in the book: 8 of 8\./);
  assert.match(await page.getAttribute('svg', 'aria-label'), /9 readings, from 12,000 km on .*2019 to 101,000 km on .*2026/);
  assert.equal((await page.getAttribute('.dots', 'd')).match(/h0/g).length, 9);
  assert.equal((await page.getAttribute('.odd', 'd')).match(/z/g).length, 2);
  const years = await page.locator('h3').allTextContents();
  assert.deepEqual(years, ['2026', '2025', '2024', '2023', '2022', '2021', '2020', '2019']);
  const whole = await open(page, `${FILE}#${cardDigits(claimsOf(200))}`);
  assert.equal(await page.locator('.visits ol > li').count(), 200);
  assert.ok(whole.includes('200 visits'));
}

async function comparing(page) {
  const older = cardDigits(claimsOf(6, new Map([[1, 18_300], [5, [18_290, 60_000]]])));
  const outcome = async (newer, pasted) => {
    await open(page, `${FILE}#${cardDigits(newer)}`);
    await page.fill('textarea', `https://card.example/#${pasted}`);
    await page.click('.compare button');
    await page.waitForSelector('.compare [role=status] p');
    return page.innerText('.compare [role=status]');
  };
  assert.match(await outcome(claimsOf(9), older), /The card of .*2026 contains that of .*2020 unchanged: 6 visits are the same\.\s*The same key signed both/);
  const changed = claimsOf(9, new Map([[5, [20_780, 59_999]], [6, [[17_100, 31_200, 0], [900, 9, 1, 'x']]], [10, []]]));
  await page.setViewportSize({ width: 360, height: 740 });
  const said = await outcome(changed, older);
  assert.match(said, /does not contain that of .*2020 unchanged/);
  assert.equal(said.match(/The visit of .* is gone\./g).length, 5);
  assert.match(said, /The latest reading is lower, or of an earlier day/);
  assert.match(said, /The odometer replaced on .*2023 is not named any more/);
  assert.ok(await fits(page));
  await accessible(page, 'after comparing');
  await picture(page, 'compared-360-full');
  assert.match(await outcome(claimsOf(9), `${older.slice(0, -1)}7`), /The signature does not match/);
}

/** Chromium has the Barcode Detection API on other systems only, so that class alone is put in its place here. */
async function camera(page) {
  await page.addInitScript((digits) => {
    let looked = 0;
    globalThis.BarcodeDetector = class {
      static getSupportedFormats() { return Promise.resolve(['qr_code']); }
      detect(video) {
        looked += 1;
        globalThis.lookedAt = [video.videoWidth, video.srcObject];
        return Promise.resolve(looked < 3 ? [] : [{ rawValue: `https://card.example/#${digits}` }]);
      }
    };
  }, vector.digits);
  await open(page, FILE);
  await page.click('text=Scan with the camera');
  await page.waitForSelector('.proof');
  assert.equal(new URL(page.url()).hash, `#${vector.digits}`);
  const [width, live] = await page.evaluate(() => [lookedAt[0], lookedAt[1].getTracks().some((track) => track.readyState === 'live')]);
  assert.ok(width > 0, 'the camera showed a picture');
  assert.equal(live, false, 'the camera is off again');
  assert.equal(await page.locator('video').count(), 0);
}

async function keyboard(page) {
  await open(page, FILE);
  await page.keyboard.press('Tab');
  assert.equal(await page.evaluate(() => document.activeElement.localName), 'select');
  await page.keyboard.press('Tab');
  await page.keyboard.insertText(vector.digits);
  await page.keyboard.press('Tab');
  assert.notEqual(await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle), 'none');
  await page.keyboard.press('Enter');
  await page.waitForSelector('.proof');
}

/** Each of these fills what a reader inflates; they are signed, so they are shown or refused, and soon. */
async function heavyCards(page) {
  const deep = Buffer.concat([Buffer.alloc(60_000, 0x81), Buffer.from([0])]);
  const rows = Array.from({ length: 8_000 }, (_, at) => [at === 0 ? 9_000 : at % 7 === 0 ? 1 : 0, at % 50, at % 64, 1]);
  const many = claimsOf(0, new Map([[6, rows], [7, 8_000], [10, Array.from({ length: 400 }, () => [9_100, 5, 9])]]));
  const start = Date.now();
  assert.match(await open(page, `${FILE}#${cardDigits(deep)}`), /is not a car's history/);
  assert.match(await open(page, `${FILE}#${cardDigits(Buffer.alloc(70_000))}`), /cannot be unpacked/);
  assert.match(await open(page, `${FILE}#${'0'.repeat(170_000)}`), /cannot be shown/);
  assert.match(await open(page, `${FILE}#${cardDigits(many)}`), /8,000 visits/);
  console.log(`    four of them in ${Date.now() - start} ms`);
}

async function hostileCard(page, faults) {
  const name = '<img src=x onerror=alert(1)><script>alert(2)</script>\u202egnp\u202c ' + 'Z\u0310\u0322\u0348'.repeat(3);
  const item = `"><a href="javascript:alert(3)">x</a>${'\u0301'.repeat(400)}\u0000`;
  const car = new Map([[1, name], [2, '</title><style>*{display:none}</style>'], [4, 'W'.repeat(3_000)]]);
  const digits = cardDigits(claimsOf(3, new Map([[3, car], [6, [[17_000, 5, 1, item]]]])));
  await page.setViewportSize({ width: 360, height: 740 });
  const text = await open(page, `${FILE}#${digits}`);
  assert.ok(text.includes('<img src=x onerror=alert(1)>') && text.includes('\ufffdgnp\ufffd'));
  assert.equal(await page.locator('main img, main script, main style, main a[href^=javascript]').count(), 0);
  assert.ok(await fits(page), 'nothing runs out of the page');
  await picture(page, 'hostile-360');
  assert.deepEqual(faults, []);
}

async function policy(page, faults) {
  await open(page, FILE);
  const tries = await page.evaluate(async () => {
    const tried = {};
    // What the test tool calls at once is let through; what runs by itself is not.
    await new Promise((later) => setTimeout(later));
    try { tried.eval = String(new Function('return 1')()); } catch (error) { tried.eval = error.name; }
    try { document.body.insertAdjacentHTML('beforeend', '<b>x</b>'); tried.markup = 'in'; } catch (error) { tried.markup = error.name; }
    tried.fetch = await fetch('data:text/plain,x').then(() => 'out', (error) => error.name);
    return tried;
  });
  assert.deepEqual(tries, { eval: 'EvalError', markup: 'TypeError', fetch: 'TypeError' });
  assert.ok(faults.length > 0, 'the browser says that the policy held');
  faults.length = 0;
}

async function looks(page) {
  const views = { card: `${FILE}#${CARD}`, invitation: FILE, refused: `${FILE}#${CARD.slice(1)}` };
  for (const [width, height] of [[360, 740], [1280, 800]]) {
    for (const colorScheme of ['light', 'dark']) {
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ colorScheme });
      for (const [name, address] of Object.entries(views)) {
        await open(page, address);
        assert.ok(await fits(page), `${name} fits ${width} px`);
        await accessible(page, `${name}, ${width} px, ${colorScheme}`);
        await picture(page, `${name}-${width}-${colorScheme}`);
      }
    }
  }
  await page.setViewportSize({ width: 360, height: 740 });
  await open(page, `${FILE}#${CARD}`);
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  assert.ok(await fits(page), 'fits 360 px with text at 200 %');
  await picture(page, 'card-360-text-200');
}

/** Chosen on the page; that a browser's own language is found is for its unit test and for the buyer's test. */
async function everyLanguage(page) {
  const said = {
    de: [/Unverändert, seit die Karte am .*2026/, /Motoröl und Filter/, /98\.420 km/],
    es: [/Sin cambios desde que se firmó/, /Aceite de motor y filtro/, /98\.420 km/],
    fr: [/Inchangé depuis sa signature/, /Vidange et filtre à huile/, /98\u202f420 km/],
    en: [/Unchanged since it was signed/, /Engine oil and filter/, /98,420 km/],
  };
  await page.setViewportSize({ width: 360, height: 740 });
  await open(page, `${FILE}#${vector.digits}`);
  const named = await page.locator('select option').allTextContents();
  assert.deepEqual(named, ['Deutsch', 'English', 'español', 'français']);
  for (const [tag, patterns] of Object.entries(said)) {
    for (const address of [`${FILE}#${vector.digits}`, FILE, `${FILE}#${CARD.slice(1)}`]) {
      await openIn(page, address, tag);
      assert.ok(await fits(page), `${tag} fits 360 px`);
      await accessible(page, `${tag}, ${address.length}`);
    }
    await openIn(page, `${FILE}#${vector.digits}`, tag);
    const text = await page.textContent('main');
    for (const pattern of patterns) assert.match(text, pattern, tag);
    assert.equal(await page.evaluate(() => document.activeElement.localName), 'select', 'the choice keeps the focus');
    for (const colorScheme of ['light', 'dark']) {
      await page.emulateMedia({ colorScheme });
      await picture(page, `card-360-${tag}-${colorScheme}-full`);
    }
  }
}

async function accessible(page, where) {
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(() => axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
  assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`), [], where);
}

async function print(page) {
  await page.emulateMedia({ colorScheme: 'dark' });
  await open(page, `${FILE}#${CARD}`);
  await page.pdf({ path: `${PICTURES}/card.pdf`, format: 'A4', margin: { top: '15mm', bottom: '15mm', left: '15mm', right: '15mm' } });
}

function fits(page) {
  return page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
}

function picture(page, name) {
  return page.screenshot({ path: `${PICTURES}/${name}.png`, fullPage: name.endsWith('full') });
}
