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
  '--disable-background-networking', '--disable-component-update', '--disable-sync'];

const { cardDigits, vector } = (await runnerImport(`${HERE}src/test-card.ts`)).module;
const { claimsOf } = (await runnerImport(`${HERE}src/test-claims.ts`)).module;

const CARD = cardDigits(claimsOf(14));
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
  await check('a card that tries to act', hostileCard);
  await check('the policy', policy);
  await check('looks and accessibility', looks);
  await check('print', print);
  await check('200 visits, slowed four times', speed);
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
  // What lies below the fold is laid out when it is scrolled to, but it is there to be read.
  return page.textContent('main');
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
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Signature verified');
  await page.click('footer a');
  await page.fill('textarea', 'nonsense');
  await page.click('button');
  await page.waitForSelector('.refusal');
  await page.goBack();
  await page.goBack();
  await page.waitForSelector('.proof');
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

async function speed(page) {
  const digits = cardDigits(claimsOf(200));
  const session = await browser.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const times = [];
  for (let round = 0; round < 7; round += 1) {
    await open(page, FILE);
    times.push(await page.evaluate(timeToCard, digits));
  }
  const middle = times.sort((one, other) => one - other)[3];
  console.log(`    from digits to painted card, 200 visits: ${middle.toFixed(0)} ms in the middle of seven`);
}

/** In the page: from the change of address to the frame after the card stands there. */
function timeToCard(digits) {
  return new Promise((done) => {
    const start = performance.now();
    new MutationObserver((_, observer) => {
      if (!document.querySelector('.proof')) return;
      observer.disconnect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
    }).observe(document.body, { childList: true, subtree: true });
    location.hash = digits;
  });
}

function fits(page) {
  return page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
}

function picture(page, name) {
  return page.screenshot({ path: `${PICTURES}/${name}.png`, fullPage: name.endsWith('full') });
}
