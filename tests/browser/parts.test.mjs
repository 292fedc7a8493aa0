// At the parts counter, at phone size against the real core: how long the last part lasted, the list as plain text,
// a number that fills the screen either way up, and the same from the terminal.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { browser, folder, listen, serve, wellkept } from './support.mjs';

const TODAY = '2026-06-01';
const CAR = 'Pip';
const UPRIGHT = { width: 360, height: 740 };
/** One is served; a shelf is open to one program at a time, so that the terminal has its own. */
const shelf = folder();
const desk = folder();
let server;
let chromium;
let page;
let needs;
let complaints;

const rows = () => page.getByRole('main').getByRole('listitem').filter({ has: page.locator('.number') });
const told = (...command) => wellkept('--shelf', desk.path, '--today', TODAY, '--vehicle', CAR, ...command);
const partsToGet = () => needs.map(({ part }) => part).filter((part) => part !== null);
/** What stands on the list as text: the parts, and what a guide names beside them. */
const listed = () => needs.filter(({ part, supply }) => part !== null || supply !== '');

before(async () => {
  for (const { path } of [shelf, desk]) wellkept('--shelf', path, '--today', TODAY, 'demo');
  needs = JSON.parse(told('--json', 'buy'));
  server = await serve(shelf.path, '--today', TODAY);
  chromium = await browser();
  const context = await chromium.newContext({ viewport: UPRIGHT, locale: 'en-GB' });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  complaints = listen(page);
  await page.goto(server.address);
  await page.getByLabel('Car in hand').selectOption({ label: CAR });
  await page.evaluate(() => { location.hash = '#/counter'; });
  await rows().first().waitFor();
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
  desk.remove();
});

/** Has the device share by taking the text, by refusing it, or not at all. */
const shareBy = (way) =>
  page.evaluate((how) => {
    delete Navigator.prototype.share;
    delete navigator.share;
    const ways = { take: async ({ text }) => { window.sharedText = text; }, refuse: () => Promise.reject(new Error('not here')) };
    if (how) Object.defineProperty(navigator, 'share', { value: ways[how], configurable: true });
  }, way);

test('each part to get says how long the last one lasted, and since when the present one is in', async () => {
  const texts = await rows().allInnerTexts();
  assert.equal(texts.length, partsToGet().length);
  for (const text of texts) assert.match(text, /In since \w+ \d{4}/);
  const lasted = needs.filter((get) => get.part !== null && get.lasted !== null);
  assert.ok(lasted.length > 0);
  const said = texts.filter((text) => /The last one lasted \d+ months and [\d\s]+\skm/.test(text));
  assert.equal(said.length, lasted.length);
});

test('the list is copied with one plain line a part', async () => {
  await shareBy(null);
  await page.getByRole('button', { name: 'Copy the list' }).click();
  await page.getByText('The list is copied.').waitFor();
  const lines = (await page.evaluate(() => navigator.clipboard.readText())).split('\n');
  assert.equal(lines.length, listed().length);
  for (const [at, { part }] of listed().entries()) {
    if (part === null) continue;
    assert.ok(lines[at].startsWith(`${part.quantity} `), lines[at]);
    assert.ok(lines[at].endsWith([part.name, part.maker, part.number].filter(Boolean).join(', ')), lines[at]);
  }
});

test('the list is shared where the device shares', async () => {
  await shareBy('take');
  await page.getByRole('button', { name: 'Copy the list' }).click();
  await page.waitForFunction(() => window.sharedText !== undefined);
  assert.equal((await page.evaluate(() => window.sharedText)).split('\n').length, listed().length);
});

test('a list that cannot be copied is shown to be selected', async () => {
  await shareBy('refuse');
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error('not here'));
  });
  await page.getByRole('button', { name: 'Copy the list' }).click();
  const text = await page.getByRole('textbox', { name: 'The list' }).inputValue();
  assert.equal(text.split('\n').length, listed().length);
});

test('a number fills the screen upright and on its side, and nothing is cut off', async () => {
  for (const viewport of [UPRIGHT, { width: 740, height: 360 }, { width: 568, height: 320 }]) {
    await page.setViewportSize(viewport);
    for (const row of await rows().all()) {
      await row.getByRole('button').first().click();
      const dialog = page.getByRole('dialog');
      const { text, cut, share } = await dialog.evaluate((element) => {
        const number = element.querySelector('strong').getBoundingClientRect();
        const within = [...element.querySelectorAll('strong, span')].map((part) => part.getBoundingClientRect());
        return {
          text: element.innerText,
          cut: within.some(({ left, top, right, bottom }) => left < 0 || top < 0 || right > innerWidth || bottom > innerHeight),
          share: Math.max(number.width / innerWidth, number.height / innerHeight),
        };
      });
      assert.equal(cut, false, `${viewport.width} x ${viewport.height}: ${text}`);
      assert.ok(share > 0.4, `${viewport.width} x ${viewport.height}: ${text} fills only ${share}`);
      await dialog.getByRole('button').click();
    }
  }
  await page.setViewportSize(UPRIGHT);
});

test('the terminal lists the parts, all or those of one item, and what to buy', () => {
  const parts = JSON.parse(told('--json', 'parts'));
  const days = parts.map(({ day }) => day);
  assert.deepEqual(days, days.toSorted().toReversed());
  const oil = JSON.parse(told('--json', 'parts', '--for', 'engine-oil'));
  assert.ok(oil.length > 0 && oil.length < parts.length);
  for (const { items } of oil) assert.ok(items.some(({ key }) => key === 'engine-oil'));
  // What is told of a part stands under it, indented.
  const lines = told('parts', '--for', 'engine-oil').trim().replace(/\n +/g, ' ').split('\n');
  assert.equal(lines.length, oil.length);
  for (const [at, line] of lines.entries()) assert.ok(line.startsWith(oil[at].numbers[0]), line);
  assert.match(lines.join('\n'), /fitted \d+ times, last on \d{4}-\d\d-\d\d; in for .+; the last one lasted \d+ months and \d+ km; [\d.]+ [A-Z]{3} on /);
  const buy = told('buy');
  for (const { number } of partsToGet()) assert.ok(buy.includes(number), number);
});

test('an item that is not in the catalogue is refused in one sentence', () => {
  assert.throws(
    () => told('parts', '--for', 'warp-core'),
    ({ status, stderr }) => status === 1 && /^There is no item warp-core in the catalogue; .+\.\n$/.test(stderr.toString()),
  );
});

test('nothing complained', () => assert.deepEqual(complaints, []));
