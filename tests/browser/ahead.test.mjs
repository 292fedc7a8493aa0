// What lies ahead, at phone size against the real core: the road under the arrow keys, a job moved to another day
// and given back, and a plan that follows what the car has and what was found on it.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { browser, folder, holds, listen, readCautions, serve, wellkept } from './support.mjs';

const TODAY = '2026-06-01';
const CAR = 'Pip';
/** Its first four years were another owner's. */
const OTHER = 'The Barge';
const shelf = folder();
let server;
let chromium;
let page;
let complaints;

before(async () => {
  wellkept('--shelf', shelf.path, '--today', TODAY, 'demo');
  server = await serve(shelf.path, '--today', TODAY);
  chromium = await browser();
  page = await chromium.newPage({ viewport: { width: 360, height: 740 }, locale: 'en-GB' });
  page.setDefaultTimeout(20_000);
  // What is refused on purpose is answered with 422.
  complaints = listen(page, (text) => / 422 /.test(text));
  await page.goto(server.address);
  await page.getByLabel('Car in hand').selectOption({ label: CAR });
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
});

const button = (name) => page.getByRole('button', { name, exact: true });
const stops = () => page.getByRole('list', { name: 'What is due, along the road' }).getByRole('button');
const focused = () => page.evaluate(() => document.activeElement.getAttribute('aria-label'));

async function go(place) {
  await page.evaluate((to) => { location.hash = `#/${to}`; }, place);
}

test('the road is one stop of the tab key, and the arrow keys walk along it', async () => {
  await go('today');
  await stops().first().waitFor();
  const labels = await stops().evaluateAll((all) => all.map((stop) => stop.getAttribute('aria-label')));
  assert.ok(labels.length >= 3, labels.join('\n'));
  for (const label of labels) assert.match(label, /\d{4}, .+: (One visit|\d+ visits|overdue|due today|soon|ahead)\b.*\.$/);
  assert.equal(await stops().evaluateAll((all) => all.filter((stop) => stop.tabIndex === 0).length), 1);
  await stops().first().focus();
  await page.keyboard.press('End');
  assert.equal(await focused(), labels.at(-1));
  await page.keyboard.press('ArrowLeft');
  assert.equal(await focused(), labels.at(-2));
  await page.keyboard.press('Enter');
  assert.equal(await stops().nth(-2).getAttribute('aria-expanded'), 'true');
  const panel = page.locator(`[id="${await stops().nth(-2).getAttribute('aria-controls')}"]`);
  await panel.getByRole('listitem').first().waitFor();
});

test('at 360 pixels the page does not scroll sideways, and no two stops cover one another', async () => {
  for (const place of ['today', 'sheet', 'bay', 'book']) {
    await go(place);
    await page.locator('main h1, main h2').first().waitFor();
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), place);
  }
  await go('today');
  await stops().first().waitFor();
  const boxes = await stops().locator('svg').evaluateAll((all) => all.map((svg) => svg.getBoundingClientRect().toJSON()));
  for (const [index, box] of boxes.entries()) {
    assert.ok(box.left >= 0 && box.right <= 360);
    assert.ok(index === 0 || boxes[index - 1].right <= box.left, `stop ${index}`);
  }
});

test('the looks of a visit are folded under its work, and nothing is bought for them', async () => {
  await go('today');
  const together = page.getByRole('group', { name: 'What to do together' });
  const jobs = together.getByRole('listitem');
  await jobs.first().waitFor();
  const work = await jobs.count();
  const fold = together.getByRole('button', { name: /^\d+ looks and tests with it$/ });
  const looks = Number.parseInt(await fold.textContent(), 10);
  await fold.click();
  assert.equal(await jobs.count(), work + looks);
  await together.getByRole('button', { name: 'another day? Hoses, check', exact: true }).waitFor();
  assert.equal(await page.getByText('Coolant hose, upper').count(), 0, 'a hose that was fitted once');
  await fold.click();
  assert.equal(await jobs.count(), work);
});

test('a job moved to another day says what that costs, is pinned, and is given back', async () => {
  await go('today');
  const move = page.getByRole('button', { name: /^another day\?/ });
  const name = (await move.first().locator('span').textContent()).trim();
  const cost = page.getByText(/^That (costs nothing more|adds about .+)\./);
  const anyDay = button(`Any day ${name}`);
  await button(`another day? ${name}`).click();
  await page.getByLabel('Do it on').fill('2027-05-03');
  await cost.filter({ hasText: 'It is late then' }).waitFor();
  await page.getByLabel('Do it on').fill(TODAY);
  await cost.filter({ hasNotText: 'It is late then' }).waitFor();
  await page.getByLabel('Do it on').fill('2026-06-20');
  await button('Keep this day').click();
  await anyDay.waitFor();
  await page.getByRole('listitem').filter({ has: anyDay }).last().getByText('You chose this day.').waitFor();
  await anyDay.click();
  await anyDay.waitFor({ state: 'detached' });
  await button(`another day? ${name}`).click();
  await page.getByLabel('Do it on').fill('2026-06-20');
  await button('Keep this day').click();
  await anyDay.waitFor();
  await go('sheet');
  await page.getByLabel('Find an item by name').fill(name);
  const line = page.getByRole('region', { name: 'The plan' }).getByRole('listitem');
  await line.getByText(/The next time on 20.Jun.2026, as you chose\./).waitFor();
  await line.getByRole('button', { name: /^change/ }).click();
  await line.getByRole('button', { name: 'Any day', exact: true }).click();
  await line.getByText(/as you chose/).waitFor({ state: 'detached' });
  await go('book');
  await page.getByText(`${name}: next time on any day`).first().waitFor();
});

test('what the car has decides what is on the plan', async () => {
  await go('sheet');
  const plan = page.getByRole('region', { name: 'The plan' });
  const line = (name) => plan.locator('ul:not(details ul) strong').getByText(name, { exact: true });
  await page.getByLabel('Find an item by name').fill('timing');
  await line('Timing chain, listen and look').waitFor();
  await answer('Timing belt', 'Not known');
  await answer('Timing chain', 'Not known');
  await line('Timing belt, look').waitFor();
  await answer('Timing chain', 'Yes');
  await line('Timing belt, look').waitFor({ state: 'detached' });
  await plan.locator('details strong').getByText('Timing belt, look', { exact: true }).waitFor();
  await line('Timing chain, listen and look').waitFor();
});

async function answer(fitting, words) {
  const fitted = page.getByRole('region', { name: 'What it has' });
  await fitted.getByRole('button', { name: /^Change this/ }).click();
  await fitted.getByRole('group', { name: fitting }).getByRole('radio', { name: words, exact: true }).check();
  await fitted.getByRole('button', { name: 'Save' }).click();
  await fitted.getByRole('button', { name: /^Change this/ }).waitFor();
}

test('what only the papers tell is asked for with the day it counts from', async () => {
  await go('sheet');
  await page.getByLabel('Find an item by name').fill('insurance');
  const line = page.getByRole('region', { name: 'The plan' }).getByRole('listitem');
  await line.getByRole('button', { name: /^change/ }).click();
  await line.getByRole('button', { name: 'Back to the catalogue' }).click();
  await line.getByText('No interval yet.').waitFor();
  await line.getByRole('button', { name: /^set its interval/ }).click();
  await line.getByLabel('Months').fill('abc');
  await line.getByLabel('Last done on, if you know').fill('2026-05-20');
  await line.getByRole('button', { name: 'Set this interval' }).click();
  await line.getByRole('alert').getByText(/abc/).waitFor();
  await line.getByText('No interval yet.').waitFor();
  await line.getByLabel('Months').fill('12');
  await line.getByRole('button', { name: 'Set this interval' }).click();
  await line.getByText(/^Every 12 months/).waitFor();
  assert.match(await page.evaluate(() => document.activeElement.textContent), /Every 12 months/, 'the focus is on the line');
  await go('today');
  await page.getByRole('listitem').filter({ hasText: 'Insurance' }).getByText(/20.May.2027/).first().waitFor();
});

test('the keyboard skips what stands on every page, and each page has its heading', async () => {
  for (const place of ['today', 'pump', 'counter', 'bay', 'book', 'sheet', 'settings']) {
    await go(place);
    await page.reload();
    await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor({ state: 'attached' });
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Skip to the content', place);
    await page.keyboard.press('Enter');
    assert.ok(await page.evaluate(() => document.activeElement.closest('main') !== null), `${place}: the focus is in the page`);
  }
});

test('a measured tread moves the tyres', async () => {
  await go('bay');
  await page.getByLabel('Find a job by name').fill('tyre tread');
  await page.getByRole('checkbox', { name: /^Tyre tread and damage, check/ }).check();
  await button('Go on with this job').click();
  await readCautions(page);
  await page.getByLabel('Tread depth in mm').fill('2.8');
  await holds(page.getByLabel('Tyres', { exact: true }), 'within-limits');
  await button('Write it into the book').click();
  await page.getByRole('link', { name: 'See the line' }).click();
  await page.getByText(/Tyres: at its limit \(Tread depth 2\.8.mm\)/).first().waitFor();
  await go('today');
  const tyres = page.getByRole('region', { name: 'What presses' }).getByRole('listitem').filter({ hasText: /^\s*Tyres/ });
  await tyres.getByRole('button', { name: /^why/ }).click();
  await tyres.getByText(/found at its limit \(Tread depth 2\.8.mm\), so that it is due now/).waitFor();
});

test('what nobody recorded asks for its day, and counts from it', async () => {
  await page.getByLabel('Car in hand').selectOption({ label: OTHER });
  await go('today');
  const question = page.getByRole('region', { name: 'What presses' }).getByRole('link', { name: /^Do you know when\?/ }).first();
  const name = (await question.locator('span').textContent()).trim();
  await question.click();
  await page.getByRole('heading', { level: 1, name: 'When was it last done?' }).waitFor();
  await button('Write it into the book').click();
  assert.equal(await page.getByLabel('Day', { exact: true }).evaluate((day) => day.validity.valueMissing), true);
  await page.getByLabel('Day', { exact: true }).fill('2026-05-02');
  await button('Write it into the book').click();
  await page.getByRole('link', { name: 'See the line' }).click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
  await go('bay');
  await page.getByLabel('Find a job by name').fill(name);
  await page.getByRole('checkbox', { name: new RegExp(`^${name}.* ahead`) }).waitFor();
});

test('nothing complained', () => assert.deepEqual(complaints, []));
