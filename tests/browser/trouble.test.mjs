// Something is wrong, and the work itself, at phone size against the real core: stop first, codes, checks that an
// answer orders anew, the visit that ends it, the brief, and a guide with this car's numbers.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { browser, folder, gone, holds, listen, readCautions, readGrave, serve, wellkept } from './support.mjs';

const TODAY = '2026-06-01';
const CAR = 'Pip';
const UPRIGHT = { width: 360, height: 740 };
const shelf = folder();
let server;
let chromium;
let page;
let complaints;

const button = (name) => page.getByRole('button', { name });
const heading = (name) => page.getByRole('heading', { name });
const tick = (name) => page.getByRole('checkbox', { name, exact: true }).first().check();
const firstCheck = () => page.locator('#next-check + div h3').innerText();

async function open(hash) {
  await page.evaluate((to) => { location.hash = to; }, hash);
}

/** Nothing is wider than a phone. */
async function fits() {
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), true);
}

before(async () => {
  wellkept('--shelf', shelf.path, '--today', TODAY, 'demo');
  server = await serve(shelf.path, '--today', TODAY);
  chromium = await browser();
  const context = await chromium.newContext({ viewport: UPRIGHT, locale: 'en-GB', reducedMotion: 'reduce' });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  complaints = listen(page);
  await page.goto(server.address);
  await page.getByLabel('Car in hand').selectOption({ label: CAR });
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
});

test('a red lamp says stop first, brings the reader to it, and stands before any list', async () => {
  await open('#/bay');
  await page.getByRole('link', { name: 'Something is wrong' }).click();
  await tick('Oil pressure lamp is on or flickers');
  const stop = page.getByRole('alert').filter({ hasText: 'Stop first' });
  await stop.waitFor();
  assert.match(await stop.innerText(), /switch the engine off/);
  await page.waitForFunction(() => document.querySelector('[role=alert] section')?.getBoundingClientRect().top < innerHeight / 2);
  await button('What to check next').click();
  await heading('Check this next').waitFor();
  const [alert, list] = await Promise.all([stop.boundingBox(), heading('Check this next').boundingBox()]);
  assert.ok(alert.y < list.y);
  await fits();
  await button('Put it away unwritten').click();
});

test('what can hurt is read one by one before a check says how it is done', async () => {
  await open('#/bay/trouble');
  await page.getByLabel('Find what you notice, by a word').fill('idle');
  await tick('Rough idle');
  await button('What to check next').click();
  await heading('Check this next').waitFor();
  const card = page.locator('#next-check + div');
  await card.getByText('Fumes.').waitFor();
  await gone(card.locator('.how'));
  await gone(card.getByRole('button', { name: 'Nothing wrong there' }));
  await card.getByRole('button', { name: 'Could not check' }).waitFor();
  await readGrave(card);
  await card.locator('.how').waitFor();
  await card.getByRole('button', { name: 'Nothing wrong there' }).waitFor();
  await fits();
  await button('Put it away unwritten').click();
});

test('a pasted scan is explained at once, its lists apart, and clearing is not mending', async () => {
  await open('#/bay/trouble');
  await page.getByLabel('Paste what the scanner said').fill('P0171\nP0300 pending\nP4 ');
  await page.getByText('Pending', { exact: true }).waitFor();
  const main = page.getByRole('main');
  for (const told of ['P0171', 'P0300', 'Cleared is not mended.']) await main.getByText(told).first().waitFor();
  await button('What the signs of P0171 stand for').first().click();
  await page.getByText('probably about fuel and air; only a hint').waitFor();
  await fits();
});

test('an answer orders the checks anew, and can be taken back', async () => {
  await page.getByLabel('Find what you notice, by a word').fill('idle');
  await tick('Rough idle');
  await page.getByLabel('What is wrong?').fill('It idles badly when cold.');
  await button('What to check next').click();
  await heading('Check this next').waitFor();
  const before = await firstCheck();
  await page.getByText('Why here').first().waitFor();
  await button('Could not check').first().click();
  await page.waitForFunction((old) => document.querySelector('#next-check + div h3')?.textContent !== old, before);
  await heading('What was checked').waitFor();
  await button(/^Take it back/).click();
  await page.waitForFunction((old) => document.querySelector('#next-check + div h3')?.textContent === old, before);
  await fits();
});

test('a trouble on its way outlasts the page', async () => {
  await page.reload();
  await heading('Check this next').waitFor();
  await button('Change what you told').click();
  await holds(page.getByLabel('What is wrong?'), 'It idles badly when cold.');
  await button('What to check next').click();
});

test('the brief is one page of facts, copied as text, and no diagnosis', async () => {
  await button('Write the brief').click();
  await heading('The complaint').waitFor();
  await fits();
  await page.evaluate(() => { delete Navigator.prototype.share; });
  await button('Share or copy').click();
  await page.getByText('The brief is copied.').waitFor();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  for (const told of ['It idles badly when cold.', 'Rough idle', 'P0171', 'P0300', 'no diagnosis']) assert.ok(text.includes(told), told);
  await page.emulateMedia({ media: 'print' });
  await gone(page.getByRole('navigation').filter({ visible: true }));
  await page.emulateMedia({ media: 'screen' });
  const kept = page.waitForEvent('download');
  await button('Save as PDF').click();
  const file = join(shelf.path, 'brief.pdf');
  await (await kept).saveAs(file);
  const printed = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
  for (const part of ['Brief for the workshop', 'The complaint', 'What is asked', 'no diagnosis']) assert.ok(printed.includes(part), printed);
  assert.equal(printed.match(/\f/g).length, 1, 'it is one page');
});

test('what was found ends the trouble with a visit, and the book remembers the cause', async () => {
  await page.getByRole('link', { name: 'Back to the trouble' }).click();
  await heading('Check this next').waitFor();
  await readGrave(page.locator('#next-check + div'));
  await button('Something is wrong there').first().click();
  await heading(/^Something was found/).waitFor();
  await page.locator('[aria-busy=false]').first().waitFor();
  const likeliest = page.locator('.offers button').first();
  const cause = await likeliest.innerText();
  await likeliest.click();
  const mended = page.getByRole('group', { name: 'What was done about it?' }).getByRole('checkbox').first();
  if (await mended.count()) await mended.check();
  await button('Write the visit and end it').click();
  await heading('Write the visit into the book').waitFor();
  await page.getByText('It ends the trouble.').waitFor();
  await button('Write it into the book').click();
  await page.getByText('It stands in the book.').waitFor();
  await open('#/bay/trouble');
  await heading('Earlier troubles and codes').waitFor();
  await page.locator('li', { hasText: 'It idles badly when cold.' }).getByText(cause).waitFor();
});

test("a car's number is written on the sheet and stands in the guide, cautions before any step", async () => {
  await open('#/sheet');
  await button('Write down numbers').click();
  await page.getByLabel('Torque of the drain plug (N·m)').fill('31');
  await page.locator('form', { hasText: 'Torque of the drain plug' }).getByRole('button', { name: 'Save' }).click();
  await page.locator('#numbers').locator('..').getByText('31').waitFor();
  await open('#/bay/guide%20oil-and-filter');
  await heading('Before the first step').waitFor();
  await gone(heading(/^Steps/));
  await readCautions(page);
  await heading(/^Steps: 0 of/).waitFor();
  await page.locator('.value', { hasText: 'Torque of the drain plug' }).getByText('31').waitFor();
  await fits();
});

test('a ticked step outlasts the page, and in large type one step fills the screen', async () => {
  const steps = page.locator('#steps ~ ol').getByRole('checkbox');
  await steps.first().check();
  await page.reload();
  await heading(/^Steps: 1 of/).waitFor();
  await button('Large type').click();
  await heading(/^Step 2 of/).waitFor();
  const done = button('Done, next');
  assert.ok((await done.boundingBox()).height >= 88);
  await fits();
  while (await done.count()) await done.click();
  await button('Usual type').click();
  await button('Write it into the book').click();
  await heading('Write the visit into the book').waitFor();
  await page.getByText('Engine oil and filter').first().waitFor();
});

test('nothing on the way was complained of', () => {
  assert.deepEqual(complaints, []);
});
