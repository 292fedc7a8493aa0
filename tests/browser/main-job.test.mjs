// The main job, clicked through at phone size against the real core: a car goes in, a reading, a photographed
// receipt and a visit go in, what is due comes out, and the card stands ready.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { browser, folder, holds, listen, readCautions, serve } from './support.mjs';

const shelf = folder();
let server;
let chromium;
let page;
let complaints;

before(async () => {
  // A step that does not come is told soon, not after half a minute.
  server = await serve(shelf.path);
  chromium = await browser();
  page = await chromium.newPage({ viewport: { width: 360, height: 740 } });
  page.setDefaultTimeout(20_000);
  // A refusal comes as 422, which the browser's console calls an error although the page says it in a sentence.
  complaints = listen(page, (text) => / 422 /.test(text));
  await page.goto(server.address);
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
});

const button = (name) => page.getByRole('button', { name, exact: true });
const go = (place) => page.evaluate((to) => { location.hash = `#/${to}`; }, place);

test('a car goes in', async () => {
  await page.getByLabel('What you call it').fill('Thistle');
  await page.getByLabel('Engine', { exact: true }).selectOption('petrol');
  await page.getByLabel('It shows now').fill('98420');
  await button('Open its book').click();
  await page.getByText(/98\D420/).first().waitFor();
});

test('a reading goes in by three taps', async () => {
  await go('pump');
  await page.getByText('The instrument shows').waitFor();
  for (const digit of ['4', '3', '1']) await page.getByRole('button', { name: digit, exact: true }).click();
  await button('Save').click();
  await page.getByText(/98\D431/).first().waitFor();
});

test('a lower reading is asked about, kept when meant, and undone', async () => {
  const newest = page.getByRole('region', { name: 'Last readings' }).getByRole('listitem').first();
  await page.getByLabel('The instrument shows').fill('98400');
  await button('Save').click();
  await button('Correct it').click();
  await button('Keep it as it is').waitFor({ state: 'detached' });
  await button('Save').click();
  await button('Keep it as it is').click();
  await newest.getByText(/98\D400/).waitFor();
  await newest.getByRole('button', { name: 'Undo' }).click();
  await newest.getByText(/98\D431/).waitFor();
});

test('a photographed receipt goes into the tray', async () => {
  const receipt = join(shelf.path, 'receipt.jpg');
  await page.screenshot({ path: receipt, type: 'jpeg' });
  await go('counter');
  await page.locator('input[type=file]').first().setInputFiles(receipt);
  await page.getByText('One paper waits in the tray.').waitFor();
  const picture = page.getByRole('button', { name: /^Open the paper of/ }).locator('img');
  await page.waitForFunction((img) => img.complete && img.naturalWidth > 0, await picture.elementHandle());
});

test('a visit with a part and the receipt goes in', async () => {
  await go('bay');
  await page.getByRole('checkbox', { name: /^Engine oil and filter/ }).check();
  await button('Go on with this job').click();
  await readCautions(page);
  // The browser's driver puts the cursor in front when it focuses a field, so a finger and a keyboard do it here.
  await page.getByLabel('Reading in km').click();
  await page.keyboard.type('431');
  await holds(page.getByLabel('Reading in km'), '98431', 'what was typed stands behind the leading digits');
  await button('Add a part').click();
  const part = page.getByRole('group', { name: /^Part / }).last();
  await part.getByLabel('What it is').fill('Oil filter');
  await part.getByLabel('Maker', { exact: true }).fill('Invented Filters');
  await part.getByLabel('Maker\u2019s number').fill('IF-1234');
  await part.getByLabel('How much').fill('1');
  await page.getByRole('checkbox', { name: /^The paper of .* belongs to this visit$/ }).check();
  await button('Write it into the book').click();
  await page.getByRole('link', { name: 'See the line' }).click();
  await page.getByRole('heading', { level: 1, name: 'Engine oil and filter' }).waitFor();
  await page.getByText('IF-1234').locator('visible=true').first().waitFor();
  await page.getByRole('button', { name: /^Open the paper of/ }).locator('visible=true').first().waitFor();
  await button('Put it right').first().waitFor();
  await button('Strike it out').first().waitFor();
  await go('book');
  await page.getByRole('listitem').filter({ hasText: 'Engine oil and filter' }).getByText('one paper').waitFor();
});

test('what is due comes out', async () => {
  await go('today');
  await page.getByText('The road ahead').waitFor();
  await page.getByText('Engine oil and filter').locator('visible=true').first().waitFor();
});

test('the card stands ready as it prints', async () => {
  await go('book/card');
  await page.locator('img[src^="blob:"]').first().waitFor();
  await page.getByText('Save as PDF').waitFor();
});

test('the card is shown and saved in the size that is chosen', async () => {
  await page.getByLabel('Size').selectOption('id1');
  await page.getByLabel('Left out').check();
  // ISO/IEC 7810: ID-1 is 85.60 mm by 53.98 mm.
  await page.waitForFunction(() => {
    const picture = document.querySelector('img[src^="blob:"]');
    return Math.abs(picture.naturalWidth / picture.naturalHeight - 85.6 / 53.98) < 0.02;
  });
  const saved = new URL(await page.getByText('Save as PDF').getAttribute('href'), server.address).searchParams;
  assert.deepEqual(['size', 'paper', 'vin'].map((name) => saved.get(name)), ['id1', 'own', 'hidden']);
});

/** The text of the full report, saved as the page saves it. */
async function report() {
  const kept = page.waitForEvent('download');
  await button('Save the full report as PDF').click();
  const file = join(shelf.path, 'report.pdf');
  await (await kept).saveAs(file);
  return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
}

test('the full report comes as a file, without what the card leaves out', async () => {
  assert.ok(await page.getByLabel('Show small photos of the receipts').isDisabled());
  const printed = await report();
  for (const part of ['Full report', 'Thistle', 'Contents', 'Photos of receipts are left out']) assert.ok(printed.includes(part), printed);
});

test('the report speaks the language of the card until another is chosen for it', async () => {
  const spoken = page.getByLabel('Language of the report');
  await page.getByLabel('Language of the card').selectOption('de');
  assert.equal(await spoken.inputValue(), 'de');
  assert.match(await report(), /Vollständiger Bericht/);
  await spoken.selectOption('fr');
  const printed = await report();
  assert.match(printed, /Rapport complet/);
  assert.doesNotMatch(printed, /Vollständiger Bericht|Full report/);
  assert.equal(await page.getByLabel('Language of the card').inputValue(), 'de');
});

test('nothing complained', () => assert.deepEqual(complaints, []));

test('a stranger without the token, or from another origin, is refused', async () => {
  const bare = server.address.split('?')[0];
  assert.equal((await fetch(bare)).status, 403);
  assert.equal((await fetch(server.address, { headers: { origin: 'http://elsewhere.example' }, redirect: 'manual' })).status, 403);
  assert.equal((await fetch(`${bare}?token=${'0'.repeat(32)}`, { redirect: 'manual' })).status, 403);
});
