// From the receipt to what stands at home, at phone size against the real core and the real networks: a photo is read,
// what it says is taken over, and the parts are in stock and count against the next visit.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { browser, drawSlip, folder, gone, holds, listen, serve, wellkept } from './support.mjs';

const TODAY = '2026-06-01';
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
  complaints = listen(page);
  await page.goto(server.address);
  await page.getByLabel('Car in hand').selectOption({ label: 'Pip' });
  // One of the numbers on the receipt is no longer to be bought.
  await page.evaluate(async () => {
    const ask = (request) => fetch('/ask', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(request) });
    const { vehicles } = await (await ask({ ask: 'shelf' })).json();
    const { book } = vehicles.find(({ name }) => name === 'Pip');
    const note = { number: '4471-B', mark: 'superseded', instead: 'KM 4471-C' };
    if (!(await ask({ ask: 'note-part', book, note })).ok) throw new Error('a note on a part was refused');
  });
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
});

const button = (name) => page.getByRole('button', { name, exact: true });
const group = (name) => page.getByRole('group', { name, exact: true });

test('a photographed receipt is read, and nothing is written yet', async () => {
  const slip = join(shelf.path, 'slip.jpg');
  await drawSlip(chromium, slip, '28/05/2026');
  await page.evaluate(() => { location.hash = '#/counter'; });
  const papers = page.getByRole('button', { name: /^Open the paper of/ });
  await papers.first().waitFor();
  const waiting = await papers.count();
  await page.locator('input[type=file]').first().setInputFiles(slip);
  await papers.nth(waiting).waitFor();
  await papers.first().click();
  await button('Read it').click();
  // Two networks without full optimisation, on whatever machine this is.
  await group('Total').waitFor({ timeout: 180_000 });
  await holds(group('Total').getByLabel('Total'), '28.10');
  await holds(group('Total').getByLabel('Currency'), 'GBP');
  await holds(group('Day').getByLabel('Day'), '2026-05-28');
  assert.match(await group('Part 1').getByLabel('Maker\u2019s number').inputValue(), /4471-B/);
  await page.getByText('The sums on it agree.').waitFor();
  await group('Part 1').getByText('Superseded; ask for KM 4471-C').waitFor();
  await group('Part 1').getByLabel('Maker\u2019s number').fill('KM 4471-C');
  await gone(group('Part 1').getByText('Superseded'));
  await group('Part 1').getByLabel('Maker\u2019s number').fill('4471-B');
});

test('what it says goes into the book once the owner says so, and stands in stock', async () => {
  await button('Bought, to be fitted later').click();
  await holds(page.getByLabel('Cost of all of it'), '28.10');
  await button('Write it into the book').click();
  await page.evaluate(() => { location.hash = '#/counter'; });
  const stock = page.getByRole('region', { name: 'In stock' });
  await stock.getByText('4471-B').first().waitFor();
  await stock.getByText('2208-A').first().waitFor();
});

test('nothing complained', () => assert.deepEqual(complaints, []));
