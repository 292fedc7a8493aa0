// The tray, clicked through at phone size against the real core: a WebP photo goes in, is tied to a visit or to a fill
// or thrown away, and what is thrown away is gone from the disk while its line stays in the book. A long document is
// stopped on its way, a short one opens as it came in. What waits at home is marked, and the corners of a sheet begin
// where they were found.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { axe, browser, folder, gone, listen, serve } from './support.mjs';

const shelf = folder();
let server;
let chromium;
let page;
let complaints;
let book;

before(async () => {
  server = await serve(shelf.path);
  chromium = await browser();
  page = await chromium.newPage({ viewport: { width: 360, height: 740 } });
  page.setDefaultTimeout(20_000);
  // What is stopped is answered with 422, which the console calls an error although it was asked for.
  complaints = listen(page, (text) => / 422 /.test(text));
  await page.goto(server.address);
  await page.getByLabel('What you call it').fill('Thistle');
  await page.getByLabel('Engine', { exact: true }).selectOption('petrol');
  await page.getByLabel('It shows now').fill('98420');
  await button('Open its book').click();
  await page.getByText(/98\D420/).first().waitFor();
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
});

const button = (name) => page.getByRole('button', { name, exact: true });
const go = (place) => page.evaluate((to) => { location.hash = `#/${to}`; }, place);
const photos = () => readdirSync(join(shelf.path, 'photos'), { recursive: true }).filter((name) => name.endsWith('.jpg'));

/** The answer of the core to one request, as the page itself asks. */
const ask = (request) =>
  page.evaluate(async (body) => {
    const answer = await fetch('/ask', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) });
    if (!answer.ok) throw new Error(await answer.text());
    return answer.json();
  }, request);

/** Takes a lossy WebP in, of one colour, as the browser itself encodes it. */
async function takeIn(colour) {
  const webp = await page.evaluate((fill) => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 300, height: 400 });
    const paint = canvas.getContext('2d');
    paint.fillStyle = fill;
    paint.fillRect(0, 0, 300, 400);
    return canvas.toDataURL('image/webp', 0.8).split(',')[1];
  }, colour);
  const file = { name: 'receipt.webp', mimeType: 'image/webp', buffer: Buffer.from(webp, 'base64') };
  await page.locator('input[type=file]').first().setInputFiles(file);
}

/** Opens the only paper of the tray. */
async function open() {
  const thumb = page.getByRole('button', { name: /^Open the paper of/ });
  const picture = await thumb.locator('img').elementHandle();
  await page.waitForFunction((img) => img.complete && img.naturalWidth > 0, picture);
  await thumb.click();
}

async function throwAway(why) {
  await button('Throw it away').click();
  await page.getByText('The photo is deleted for good. The book keeps a line that says so.').waitFor();
  await page.getByLabel('Why (may stay empty)').fill(why);
  await button('Delete the photo').click();
}

test('a WebP photo goes into the tray and is thrown away after one question', async () => {
  await go('counter');
  await takeIn('beige');
  await page.getByText('One paper waits in the tray.').waitFor();
  assert.equal(photos().length, 2, 'the photo and its thumbnail');
  await open();
  await button('Throw it away').click();
  await button('Cancel').click();
  await throwAway('blurred');
  await page.getByText('No papers wait in the tray.').waitFor();
  assert.deepEqual(photos(), []);
});

test('the book says that it was thrown away and shows no picture', async () => {
  await go('book');
  const line = page.getByRole('listitem').filter({ hasText: /thrown away: .*blurred/ });
  await line.getByRole('link').click();
  await page.getByText('The photo was deleted when the paper was thrown away.').locator('visible=true').first().waitFor();
  await gone(page.locator('main img'));
  await gone(button('Throw it away'));
  await gone(button('Strike it out'));
});

test('nothing is missed by the check', async () => {
  await go('settings');
  await button('Check now').click();
  await page.getByText(/^Everything verified: .* and 0 photos\.$/).waitFor();
});

test('the same photo is a new paper, and can be thrown away in the book', async () => {
  await go('counter');
  await takeIn('beige');
  await page.getByText('One paper waits in the tray.').waitFor();
  assert.equal(photos().length, 2);
  await go('book');
  await page.getByRole('listitem').filter({ hasText: 'Paper that belongs to no line yet' }).filter({ hasNotText: 'thrown away' }).getByRole('link').click();
  await throwAway('');
  await page.getByText('thrown away', { exact: true }).waitFor();
  assert.deepEqual(photos(), []);
});

/** Ties the only paper of the tray to the line that begins with these words, and looks at what that line says. */
async function tieTo(words) {
  await go('counter');
  await page.getByText('One paper waits in the tray.').waitFor();
  await open();
  const lines = page.getByLabel('Or it belongs to a line in the book');
  const line = lines.locator('option').filter({ hasText: words }).first();
  await line.waitFor({ state: 'attached' });
  await lines.selectOption(await line.getAttribute('value'));
  await button('Put it there').click();
  await page.getByText('No papers wait in the tray.').waitFor();
  await page.getByRole('status').getByRole('link').click();
  const shown = page.locator('main img').first();
  await shown.waitFor();
  await page.waitForFunction((img) => img.complete && img.naturalWidth > 0, await shown.elementHandle());
}

test('a long document is stopped on its way, and nothing of it is kept', async () => {
  const printer = await chromium.newPage();
  await printer.setContent('<p style="break-after: page">Sheet</p>'.repeat(20));
  const file = { name: 'invoices.pdf', mimeType: 'application/pdf', buffer: await printer.pdf({ format: 'A4' }) };
  await printer.close();
  await go('counter');
  const kept = readdirSync(join(shelf.path, 'photos'), { recursive: true });
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.getByText(/^this one: [1-9]\d? %$/).waitFor();
  await button('Stop').click();
  await page.getByText('Stopped: one file was not taken in.').waitFor();
  await page.getByText('No papers wait in the tray.').waitFor();
  assert.deepEqual(readdirSync(join(shelf.path, 'photos'), { recursive: true }), kept);
});

test('a paper is tied to a visit, and the visit shows it', async () => {
  ({ book } = (await ask({ ask: 'shelf' })).vehicles[0]);
  await ask({ ask: 'record-visit', book, visit: { items: [{ own: 'Roof rail tightened' }] } });
  await go('counter');
  await takeIn('ivory');
  await tieTo('Roof rail tightened');
  await page.getByText('Roof rail tightened').first().waitFor();
});

test('a paper is tied to a fill, and the fill shows it', async () => {
  const fuel = { kind: 'petrol', amount: '41.30', price: '1.689', currency: 'EUR' };
  await ask({ ask: 'take-reading', book, reading: { reading: '98900', fuel } });
  await go('counter');
  await takeIn('lavender');
  await tieTo('Fill');
  await page.getByText(/41\D30/).first().waitFor();
});

test('what waits at home is marked as superseded, and warns from then on', async () => {
  const parts = [{ name: 'Oil filter', maker: 'Quarrel', number: 'KM 4471-B', quantity: '1' }];
  await ask({ ask: 'write-bought', book, bought: { shop: 'Fairlead', parts } });
  await go('today');
  await go('counter');
  const stock = page.getByRole('region', { name: 'In stock' });
  await stock.getByRole('button', { name: 'Note something on Quarrel KM 4471-B' }).click();
  await stock.getByLabel('superseded').check();
  await stock.getByLabel('Number to ask for in its place').fill('KM 4471-C');
  await stock.getByRole('button', { name: 'Write it into the book' }).click();
  await stock.getByText('Superseded; ask for KM 4471-C').waitFor();
});

test('the corners to be set begin where they were found', async () => {
  await go('counter');
  const jpeg = await page.evaluate(() => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 600, height: 800 });
    const paint = canvas.getContext('2d');
    for (const [colour, ...where] of [['#282422', 0, 0, 600, 800], ['#f0eee6', 120, 160, 360, 480]]) {
      paint.fillStyle = colour;
      paint.fillRect(...where);
    }
    return canvas.toDataURL('image/jpeg', 0.9).split(',')[1];
  });
  const file = { name: 'sheet.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(jpeg, 'base64') };
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.getByText('One paper waits in the tray.').waitFor();
  await open();
  await button('Set the corners').click();
  const corner = button('upper left corner');
  await corner.waitFor();
  await page.waitForFunction((handle) => Math.abs(parseFloat(handle.style.left) - 20) < 3, await corner.elementHandle());
});

/** A PDF of two pages, as a shop would send it. */
async function sheets() {
  const shop = await chromium.newPage();
  await shop.setContent('<h1>Hollin Lane Motor Parts</h1><p>Invoice</p><p style="break-before: page">Terms</p>');
  const pdf = await shop.pdf({ format: 'A5' });
  await shop.close();
  return pdf;
}

/** What the server answers at this address. */
const fetched = (address) => page.request.get(new URL(address, page.url()).href);
const sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex');

/** The one link to a PDF on the page, once it is there. */
async function pdfLink() {
  const link = page.getByRole('link', { name: 'Open the PDF' }).locator('visible=true');
  await link.waitFor();
  return link;
}

test('a PDF opens as it came in, in a tab of its own where no script runs', async () => {
  await go('counter');
  await open();
  await throwAway('');
  await page.getByText('No papers wait in the tray.').waitFor();
  const pdf = await sheets();
  await page.locator('input[type=file]').first().setInputFiles({ name: 'invoice.pdf', mimeType: 'application/pdf', buffer: pdf });
  await page.getByText('2 papers wait in the tray.').waitFor();
  await page.getByRole('button', { name: /^Open the paper of .*, page 2$/ }).click();
  await page.getByText('PDF, page 2 of 2', { exact: true }).waitFor();
  const link = await pdfLink();
  const address = await link.getAttribute('href');
  const answer = await fetched(address);
  const headers = answer.headers();
  assert.equal(answer.status(), 200);
  assert.equal(sha256(await answer.body()), sha256(pdf));
  assert.equal(headers['content-type'], 'application/pdf');
  assert.match(headers['content-disposition'], /^inline; filename="paper-\d{4}-\d\d-\d\d\.pdf"$/);
  assert.equal(headers['x-content-type-options'], 'nosniff');
  assert.equal(headers['cache-control'], 'no-store');
  assert.match(headers['content-security-policy'], /^default-src 'none';/);
  assert.doesNotMatch(headers['content-security-policy'], /script-src/);
  const renamed = await fetched(`${address.slice(0, address.lastIndexOf('/'))}/a%22%3B%0D%0AX%C3%A9.pdf`);
  assert.equal(renamed.headers()['content-disposition'], 'inline; filename="a----X-.pdf"', 'a name stays a name');
  const [tab] = await Promise.all([page.context().waitForEvent('page'), link.click()]);
  // The browser's own viewer holds it in a frame, and has not put it down as a file.
  await tab.waitForURL(`**${address}`);
  const viewed = () => tab.frames().some((frame) => frame.url().startsWith('chrome-extension:'));
  for (const until = Date.now() + 15_000; Date.now() < until && !viewed(); ) await tab.waitForTimeout(50);
  assert.ok(viewed(), 'the viewer shows it');
  await tab.close();
});

test('the visit to which a page is tied leads to the PDF too', async () => {
  const { tray } = await ask({ ask: 'counter', book });
  await ask({ ask: 'record-visit', book, visit: { items: [{ own: 'Tow bar greased' }], papers: [tray[0].subject] } });
  await go('book');
  await page.getByRole('listitem').filter({ hasText: 'Tow bar greased' }).getByRole('link').click();
  await page.getByRole('button', { name: /^Open the paper of/ }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByText(/^PDF, page [12] of 2$/).waitFor();
  await pdfLink();
  assert.deepEqual((await axe(page, 'wcag2a', 'wcag2aa', 'wcag22aa')).violations, []);
  await dialog.getByRole('button', { name: 'Close' }).click();
});

test('of a page that was thrown away the PDF is given out no more', async () => {
  await go('counter');
  await page.getByText('One paper waits in the tray.').waitFor();
  await open();
  const thrown = await (await pdfLink()).getAttribute('href');
  await throwAway('');
  await page.getByText('No papers wait in the tray.').waitFor();
  assert.equal((await fetched(thrown)).status(), 422);
});

test('nothing complained', () => assert.deepEqual(complaints, []));
