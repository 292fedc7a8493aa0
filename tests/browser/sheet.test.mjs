// The car's own sheet, at phone size against the real core: an item of one's own, what is not for this car, how the car
// is driven, and what the last owner had switched off.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { browser, folder, gone, listen, serve, WELLKEPT, wellkept } from './support.mjs';

const TODAY = ['--today', '2026-06-01'];
const OWN = 'Roof rack, bolts';
const shelf = folder();
const next = folder();
let server;
let chromium;
let page;
let complaints;

const ask = (question) => JSON.parse(execFileSync(WELLKEPT, ['--shelf', shelf.path, ...TODAY, 'ask'], { input: JSON.stringify(question), encoding: 'utf8' }));

before(async () => {
  // New two years ago, 1 000 km a month since, its oil changed today.
  const vehicle = {
    ...{ name: 'Thistle', engine: 'petrol', unit: 'km', first_use: '2024-06-01', bought_new: true },
    ...{ reading: '24000', yearly: '12000', fitted: { 'timing-chain': true, turbo: false } },
  };
  const { book } = ask({ ask: 'add-vehicle', vehicle });
  wellkept('--shelf', shelf.path, ...TODAY, 'visit', '--item', 'engine-oil', '--reading', '24000');
  ask({ ask: 'change-plan', book, item: { catalogue: 2 }, change: { to: 'off' } });
  server = await serve(shelf.path, ...TODAY);
  chromium = await browser();
  page = await chromium.newPage({ viewport: { width: 360, height: 740 }, locale: 'en-GB' });
  page.setDefaultTimeout(20_000);
  complaints = listen(page);
  await page.goto(server.address);
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
  next.remove();
});

const plan = () => page.getByRole('region', { name: 'The plan' });
const line = (name) => plan().getByRole('listitem').filter({ has: page.locator('strong').getByText(name, { exact: true }) });
const find = (name) => page.getByLabel('Find an item by name').fill(name);
const focused = () => page.evaluate(() => document.activeElement.textContent);

async function go(place) {
  await page.evaluate((to) => { location.hash = `#/${to}`; }, place);
}

/** What the page says of an item that is due ahead: its day or reading, and why. */
async function whyOf(name) {
  await go('today');
  await page.getByRole('button', { name: /more ahead$/ }).click();
  const due = page.getByRole('listitem').filter({ has: page.locator('strong').getByText(name, { exact: true }) }).first();
  await due.getByRole('button', { name: /^why/ }).click();
  return (await due.textContent()).replaceAll('\u00a0', ' ');
}

async function fitsThePhone() {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  assert.ok(wide <= 0, `${wide} px too wide`);
}

test('an item of one’s own says what neglect costs, and can be switched off and on again', async () => {
  await go('sheet');
  await page.getByRole('button', { name: 'Add an item of your own' }).click();
  const name = page.getByLabel('Something else, in your own words');
  assert.equal(await name.getAttribute('maxlength'), '80');
  await name.fill(OWN);
  await page.getByLabel('Months').fill('12');
  await page.getByLabel('What is at stake if it is left undone').selectOption({ label: 'Someone’s safety' });
  await fitsThePhone();
  await page.getByRole('button', { name: 'Put it on the plan' }).click();
  await line(OWN).getByText(/Every 12 months.*At stake: Someone’s safety\./).waitFor();
  assert.match(await focused(), new RegExp(OWN), 'the focus is on the new line');

  await line(OWN).getByRole('button', { name: /^change/ }).click();
  await line(OWN).getByRole('button', { name: 'Switch it off' }).click();
  await line(OWN).getByText('Switched off', { exact: true }).waitFor();
  await line(OWN).getByRole('button', { name: /^change/ }).click();
  await line(OWN).getByRole('button', { name: 'Switch it on again' }).click();
  await line(OWN).getByText(/Every 12 months.*Someone’s safety\./).waitFor();

  // Counted from the day on which the car was new it is overdue, and that presses.
  await go('today');
  await page.getByRole('region', { name: 'What presses' }).getByRole('listitem').filter({ hasText: OWN }).getByText('overdue').waitFor();
});

test('what is not for this car says why, and is there after all', async () => {
  await go('sheet');
  const fold = plan().locator('details').filter({ hasText: 'Not for this car' });
  assert.equal(await fold.evaluate((details) => details.open), false, 'it is folded away');
  await fold.locator('summary').click();
  await line('Timing belt, look').getByText('It does not have: Timing belt.').waitFor();
  await line('Glow plugs').getByText('No car with this engine has it.').waitFor();
  await fitsThePhone();

  await line('Timing belt, look').getByRole('button', { name: /^it has this after all/ }).click();
  await line('Timing belt, look').getByRole('button', { name: /^change/ }).waitFor();
  assert.match(await focused(), /^Timing belt, look/, 'the focus goes with the item');
  await gone(line('Timing chain, listen and look').getByRole('button', { name: /^change/ }));
  await page.getByRole('region', { name: 'What it has' }).getByText('Timing belt', { exact: true }).waitFor();

  // An engine that has no glow plugs as a rule: only an interval puts them on the plan.
  await find('glow');
  await line('Glow plugs').getByRole('button', { name: /^it has this after all/ }).click();
  await line('Glow plugs').getByLabel('Months').fill('48');
  await fitsThePhone();
  await line('Glow plugs').getByRole('button', { name: 'Set this interval' }).click();
  await line('Glow plugs').getByText(/^Every 48 months/).waitFor();
  await line('Glow plugs').getByRole('button', { name: /^change/ }).click();
  await line('Glow plugs').getByRole('button', { name: 'Back to the catalogue' }).click();
  await line('Glow plugs').getByText('No car with this engine has it.').waitFor();
});

// Common practice: oil after 15 000 km or 12 months; after 10 000 km where it is towed with or driven on short trips.
// At 24 000 km today and 1 000 km a month, that is in twelve months, or at 34 000 km in ten.
test('the four questions tighten what is due', async () => {
  const before = await whyOf('Engine oil and filter');
  assert.match(before, /by 1 Jun 2027/);
  assert.match(before, /Every 15 000 km .*12 months/);
  await go('sheet');
  await page.getByRole('region', { name: 'What it is' }).getByRole('button', { name: /^Change this/ }).click();
  const questions = page.getByRole('group', { name: 'How is it driven?' }).getByRole('checkbox');
  assert.equal(await questions.count(), 4);
  for (const question of await questions.all()) await question.check();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('short trips, towing, dust and standing traffic').waitFor();
  const after = await whyOf('Engine oil and filter');
  assert.match(after, /34 000 km/);
  assert.match(after, /Every 10 000 km .*shortened for short trips and towing/);
});

test('the next owner is told what the last one had switched off', async () => {
  // Only one program at a time has a shelf open.
  server.stop();
  const file = join(next.path, 'thistle.wellkept');
  wellkept('--shelf', shelf.path, ...TODAY, 'handover', '--out', file);
  wellkept('--shelf', next.path, ...TODAY, 'receive', file);
  const his = await serve(next.path, ...TODAY);
  try {
    await page.goto(his.address);
    await go('sheet');
    await plan().getByRole('heading', { name: 'Switched off by an earlier owner' }).waitFor();
    await line('Engine air filter').getByText(/^Switched off on 1.Jun.2026, before the book was handed over on 1.Jun.2026, with the key .+\.$/).waitFor();
    await fitsThePhone();
    await line('Engine air filter').getByRole('button', { name: /^change/ }).click();
    await line('Engine air filter').getByRole('button', { name: 'Back to the catalogue' }).click();
    await gone(plan().getByRole('heading', { name: 'Switched off by an earlier owner' }));
    await line('Engine air filter').getByText(/^Every /).waitFor();
  } finally {
    his.stop();
  }
});

test('nothing complained', () => assert.deepEqual(complaints, []));
