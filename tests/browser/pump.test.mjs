// The pump at phone size against the real core: three taps and Save, one question, the way back, the third of three
// amounts, a draft that outlasts a killed browser, contrast in sun and dark; and what its numbers earn in the book.
import assert from 'node:assert/strict';
import { once } from 'node:events';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { axe, browser, browserOn, folder, gone, holds, killAllOn, listen, serve, wellkept } from './support.mjs';

const PHONE = { width: 360, height: 740 };
const TODAY = '2026-06-01';

const shelf = folder();
let server;
let chromium;
let page;
let complaints;

before(async () => {
  server = await serve(shelf.path);
  chromium = await browser();
  page = await chromium.newPage({ viewport: PHONE });
  page.setDefaultTimeout(20_000);
  complaints = listen(page, (text) => / 422 /.test(text));
  await page.goto(server.address);
  await page.getByLabel('What you call it').fill('Thistle');
  await page.getByLabel('Engine', { exact: true }).selectOption('petrol');
  await page.getByLabel('It shows now').fill('98000');
  await button('Open its book').click();
  await page.getByText(/98\D000/).first().waitFor();
  await go('pump');
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
});

const button = (name, on = page) => on.getByRole('button', { name, exact: true });
const go = (place, on = page) => on.evaluate((to) => { location.hash = `#/${to}`; }, place);
const instrument = (on = page) => on.getByLabel('The instrument shows');
const saved = (digits) => page.getByRole('status').getByText(new RegExp(`^Saved: ${digits.replace(' ', '\\D')}`));
const newest = () => page.getByRole('region', { name: 'Last readings' }).getByRole('listitem').first();

/** The pad as it stands before anything is typed. */
async function untouched() {
  await instrument().waitFor();
  if ((await instrument().inputValue()) !== '98') await button('Clear').click();
}

test('three taps and Save, and everything for it stands on one screen', async () => {
  await instrument().waitFor();
  await holds(instrument(), '98', 'the leading digits stand there');
  const { y, height } = await button('Save').boundingBox();
  const places = await page.getByRole('navigation', { name: 'Places' }).boundingBox();
  assert.ok(y + height <= places.y, 'Save is not below the fold');
  for (const digit of ['4', '2', '0']) await button(digit).click();
  await button('Save').click();
  await saved('98 420').waitFor();
  await newest().getByText(/98\D420/).waitFor();
});

test('a keyboard types digits wherever the focus is, and Enter saves', async () => {
  await untouched();
  await button('5').focus();
  await page.keyboard.type('440');
  await holds(instrument(), '98440');
  await instrument().focus();
  await page.keyboard.press('Enter');
  await saved('98 440').waitFor();
});

test('a lower reading is asked about once, with its numbers, and kept', async () => {
  await untouched();
  await instrument().fill('98430');
  await button('Save').click();
  const question = page.getByRole('alert').filter({ has: button('Keep it as it is') });
  assert.match(await question.innerText(), /98\D430/);
  assert.match(await question.innerText(), /98\D440/);
  await button('Keep it as it is').click();
  await saved('98 430').waitFor();
  await gone(button('Keep it as it is'));
});

test('the last entry is taken back, and its line stays readable', async () => {
  await button('Undo').first().click();
  await page.getByText('Taken back. The line stays readable in the book, struck out.').waitFor();
  await newest().getByText(/98\D440/).waitFor();
  await go('book');
  await page.getByText('struck out: A slip, undone at once').waitFor();
  await go('pump');
});

test('amount and price give the total, which is shown as worked out and stands in the book', async () => {
  await untouched();
  await page.keyboard.type('480');
  await page.getByLabel('Fuel as well').check();
  await page.keyboard.type('41,30'); // the amount has the focus
  await page.getByLabel('Per litre').fill('1.689');
  await page.getByLabel('Currency').fill('EUR');
  await page.getByText(/^That makes 69\.76\sEUR in all\.$/).waitFor();
  await button('Save').click();
  await saved('98 480').waitFor();
  await newest().getByText(/^41\.30\slitres, 69\.76\sEUR, full tank$/).waitFor();
});

test('three that disagree are asked about, and what was remembered is offered again', async () => {
  await untouched();
  await page.keyboard.type('980');
  await page.getByLabel('Fuel as well').check();
  await holds(page.getByLabel('Currency'), 'EUR');
  await page.getByLabel('Amount', { exact: true }).fill('40');
  await page.getByLabel('Per litre').fill('1.689');
  await page.getByLabel('Paid in all').fill('99.00');
  await button('Save').click();
  await button('Keep it as it is').waitFor();
  await page.getByLabel('Paid in all').fill('67.56');
  await button('Keep it as it is').waitFor({ state: 'detached' });
  await button('Save').click();
  await saved('98 980').waitFor();
  await page.getByText(/^8\.0\sL\/100 km since the last full tank$/).waitFor(); // 40 litres over 500 km
});

test('nothing is called saved while the core does not answer, and nothing typed is lost', async () => {
  await untouched();
  await page.route('**/ask', (route) => route.abort());
  await page.keyboard.type('990');
  await button('Save').click();
  await page.getByText(/core does not answer/).first().waitFor();
  assert.equal(await saved('98 990').count(), 0);
  await holds(instrument(), '98990');
  await page.unroute('**/ask');
  await button('Clear').click();
  complaints.splice(0); // the browser itself complained of the request that was cut off
});

test('every word reaches 7 : 1 in light and in dark (WCAG 2.2, 1.4.6)', async () => {
  for (const colorScheme of ['light', 'dark']) {
    await page.emulateMedia({ colorScheme });
    await page.getByLabel('Fuel as well').check();
    const { violations, passes } = await axe(page, 'color-contrast-enhanced');
    assert.deepEqual(violations.flatMap(({ nodes }) => nodes.map(({ target }) => target)), [], colorScheme);
    assert.ok(passes.flatMap(({ nodes }) => nodes).length > 30, 'they were looked at');
    await page.getByLabel('Fuel as well').uncheck();
  }
  await page.emulateMedia({ colorScheme: 'light' });
});

/** A browser with its own profile, which can be killed like an app, and is when the test `t` is over. */
async function killable(t, profile) {
  const context = await browserOn(profile);
  const ended = once(context, 'close');
  const kill = async () => {
    killAllOn(`--user-data-dir=${profile}`);
    await ended;
  };
  // A browser that is left running would keep the whole run from ending.
  t.after(kill);
  const inside = context.pages()[0] ?? (await context.newPage());
  await inside.goto(`${server.address}#/pump`);
  await instrument(inside).waitFor();
  return { inside, kill };
}

/** The digits of the drafts that the device keeps. A reading transaction waits for the writing ones before it. */
const keptDigits = (inside) => inside.evaluate(() => new Promise((resolve, reject) => {
  const opening = indexedDB.open('wellkept');
  opening.onerror = () => reject(opening.error);
  opening.onsuccess = () => {
    const reading = opening.result.transaction('drafts').objectStore('drafts').getAll();
    reading.onerror = () => reject(reading.error);
    reading.onsuccess = () => resolve(reading.result.map(({ digits }) => digits));
  };
}));

test('a half-typed reading survives the browser being killed as soon as the device has it', async (t) => {
  const profile = join(shelf.path, 'profile');
  const first = await killable(t, profile);
  await first.inside.keyboard.type('99');
  await holds(instrument(first.inside), '9899');
  assert.deepEqual(await keptDigits(first.inside), ['9899'], 'it is kept with the next transaction, not seconds later');
  await first.kill();
  const second = await killable(t, profile);
  await holds(instrument(second.inside), '9899');
});

test('the figures of the invented household stand in the book, each plot with its table', async () => {
  const demo = folder();
  wellkept('--shelf', demo.path, '--today', TODAY, 'demo');
  const other = await serve(demo.path, '--today', TODAY);
  try {
    await page.goto(other.address);
    await go('book/running');
    const plot = page.getByRole('figure', { name: /^Consumption: / }).first();
    assert.match(await plot.getByRole('img').getAttribute('aria-label'), /^Consumption from .* full tanks: between /);
    await plot.getByText('The figures as a table').click();
    await plot.getByRole('row').nth(10).waitFor();
    await page.getByRole('figure', { name: /^Odometer/ }).waitFor();
    await page.getByRole('heading', { name: 'What else moves it' }).waitFor();
    await go('book/costs');
    const years = page.getByRole('figure', { name: /^By year, in [A-Z]{3}$/ }).first();
    await years.getByText('The figures as a table').click();
    await years.getByRole('row').nth(2).waitFor();
    await go('book/measured');
    await page.getByLabel('Battery voltage at rest in V').fill('12,48');
    await button('Save').click();
    await page.getByText('It stands in the book.').waitFor();
    await page.getByText(/12\.48\sV on /).first().waitFor();
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false, 'nothing is wider than the phone');
  } finally {
    other.stop();
    demo.remove();
  }
});

test('the pages complain of nothing', () => assert.deepEqual(complaints, []));
