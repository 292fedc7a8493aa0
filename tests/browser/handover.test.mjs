// A car changes hands, as two people do it: one hands its book over, the other takes it in and goes on writing.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { browser, folder, gone, listen, serve, wellkept } from './support.mjs';

const TODAY = ['--today', '2026-06-01'];
const PASSPHRASE = 'Wälzlager sieben';
// What the server refuses on purpose comes back with this status, and the console says so.
const pardoned = (text) => text.includes('422');

let seller;
let buyer;
let chromium;
let files;

before(async () => {
  [files, seller, buyer] = [folder(), folder(), folder()];
  wellkept('--shelf', seller.path, ...TODAY, 'demo');
  seller.server = await serve(seller.path, ...TODAY);
  buyer.server = await serve(buyer.path, ...TODAY);
  chromium = await browser();
});

after(async () => {
  await chromium?.close();
  for (const person of [seller, buyer]) person?.server?.stop();
  for (const made of [seller, buyer, files]) made?.remove();
});

async function open(person, size = { width: 360, height: 760 }) {
  const context = await chromium.newContext({ viewport: size, acceptDownloads: true, locale: 'en-GB' });
  const page = await context.newPage();
  const complaints = listen(page, pardoned);
  await page.goto(person.server.address);
  return { page, complaints };
}

test('a book is handed over with a passphrase, taken in, written in, and taken back', async () => {
  const { page, complaints } = await open(seller);
  await page.goto(`${page.url().split('#')[0]}#/book/handover`);
  await page.getByLabel('To the next owner').fill('Mind the left wing mirror');
  await page.getByLabel('Passphrase for the file').fill(PASSPHRASE);
  await page.getByLabel('The passphrase once more').fill('something else');
  assert.equal(await page.getByRole('button', { name: 'Hand the book over' }).isDisabled(), true);
  await page.getByLabel('The passphrase once more').fill(PASSPHRASE);
  await page.getByRole('button', { name: 'Hand the book over' }).click();
  assert.match(await page.getByRole('alert').innerText(), /read-only here/);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Write the file and hand it over' }).click();
  const download = await saving;
  assert.match(download.suggestedFilename(), /^[\w-]+-2026-06-01\.wellkept$/);
  const file = join(files.path, 'book.wellkept');
  await download.saveAs(file);
  assert.ok(readFileSync(file).subarray(0, 21).toString() === 'age-encryption.org/v1');

  // Every place says so in one line, and none offers to write.
  await page.getByText('The file is whole').waitFor();
  for (const place of ['today', 'pump', 'counter', 'bay', 'book', 'sheet']) {
    await page.goto(`${page.url().split('#')[0]}#/${place}`);
    await page.getByText(/Handed over on 1.Jun.2026; read-only here/).waitFor();
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    await gone(page.getByRole('main').locator('button.main, input[type=file]'));
  }
  assert.deepEqual(complaints, []);

  const other = await open(buyer);
  await other.page.getByLabel('Choose the file').setInputFiles(file);
  await other.page.getByText('The file is locked').waitFor();
  await other.page.getByLabel('Passphrase').fill('not this one');
  await other.page.getByRole('button', { name: 'Open it', exact: true }).click();
  assert.match(await other.page.getByRole('alert').innerText(), /does not open the file/);
  await other.page.getByLabel('Passphrase').fill(PASSPHRASE);
  await other.page.getByRole('button', { name: 'Open it', exact: true }).click();
  await other.page.getByText('every signature verified').waitFor();
  await other.page.getByText('Mind the left wing mirror').waitFor();
  await other.page.getByRole('button', { name: /^Open the book of/ }).click();
  await other.page.getByText('Handed over to the next owner').first().waitFor();
  await other.page.goto(`${other.page.url().split('#')[0]}#/pump`);
  await other.page.getByRole('heading', { level: 1 }).first().waitFor();
  await gone(other.page.getByText('read-only here'));
  assert.deepEqual(other.complaints, []);

  await page.goto(`${page.url().split('#')[0]}#/book/handover`);
  await page.getByRole('button', { name: 'Take it back' }).click();
  await page.getByRole('button', { name: 'Take the book back' }).click();
  await page.getByRole('button', { name: 'Hand the book over' }).waitFor();
  await gone(page.getByText('read-only here'));
  assert.deepEqual(complaints, []);
});

test('a file that is none is refused in one sentence, and nothing is taken in', async () => {
  const { page, complaints } = await open(buyer, { width: 1280, height: 800 });
  await page.goto(`${page.url().split('#')[0]}#/add`);
  await page.getByLabel('Choose the file').setInputFiles({ name: 'x.wellkept', mimeType: '', buffer: Buffer.from('PK') });
  assert.match(await page.getByRole('alert').innerText(), /no book that was handed over/);
  assert.deepEqual(complaints, []);
});
