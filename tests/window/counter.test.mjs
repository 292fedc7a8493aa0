// The counter in the real window: a receipt is chosen, read by the real networks and written, another paper is tied to
// the line that came of it, and a PDF is saved as it came in.
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { after, before, test } from 'node:test';
import { browser, drawSlip } from '../browser/support.mjs';
import { addCar, folder, go, openWindow, says } from './support.mjs';

const OTHER = fileURLToPath(new URL('../../icons/128x128.png', import.meta.url));

const shelf = folder();
let opened;
let window;

/** A day of last month that can be read in one way only, since no month has its number. */
const DAY = lastMonth(28);

function lastMonth(day) {
  const now = new Date();
  return new Date(Date.UTC(now.getUTCFullYear(), now.getUTCMonth() - 1, day)).toISOString().slice(0, 10);
}

before(async () => {
  // What the window saves goes where this machine is told that documents are.
  process.env.XDG_CONFIG_HOME = join(shelf.path, 'config');
  mkdirSync(process.env.XDG_CONFIG_HOME);
  writeFileSync(join(process.env.XDG_CONFIG_HOME, 'user-dirs.dirs'), `XDG_DOCUMENTS_DIR="${join(shelf.path, 'documents')}"\n`);
  opened = await openWindow('--shelf', shelf.path);
  window = opened.window;
  await addCar(window, 'Thistle', '98420');
});

after(async () => {
  await opened?.close();
  shelf.remove();
});

const button = (text) => window.$(`button=${text}`);
/** The field with this name, in a group of the page. */
const field = (group, name) => window.$(`//*[@role="group"][@aria-label="${group}"]//*[@id=//label[normalize-space()="${name}"]/@for]`);
const paper = () => window.$('button[aria-label^="Open the paper of"]');

/** Chooses a file as a person does, behind the key for files. */
async function choose(path) {
  await go(window, 'counter');
  const files = window.$('input[type="file"]:not([capture])');
  await files.waitForExist();
  await files.addValue(path);
  await says(window, 'One paper waits in the tray.');
}

/** Waits until a picture is drawn: the window serves it, and the page may show it. */
async function drawn(picture) {
  await picture.waitForExist();
  await window.waitUntil(() => window.execute((img) => img.complete && img.naturalWidth > 0, picture));
}

test('a receipt that is chosen shows in the tray', async () => {
  const slip = join(shelf.path, 'slip.jpg');
  const chromium = await browser();
  const [year, month, day] = DAY.split('-');
  await drawSlip(chromium, slip, `${day}/${month}/${year}`);
  await chromium.close();
  await choose(slip);
  await drawn(await paper().$('img'));
});

test('what it says is read, and offered beside its place on the photo', async () => {
  await paper().click();
  await button('Read it').click();
  // Two networks without full optimisation, on whatever machine this is.
  await says(window, 'The sums on it agree.', 180_000);
  assert.equal(await field('Total', 'Total').getValue(), '28.10');
  assert.equal(await field('Total', 'Currency').getValue(), 'GBP');
  assert.equal(await field('Day', 'Day').getValue(), DAY);
  assert.match(await field('Part 1', 'Maker\u2019s number').getValue(), /4471-B/);
  await drawn(await window.$('[role="group"][aria-label="Total"] img'));
});

test('it goes into the book once the owner says so, and stands in stock', async () => {
  await button('Bought, to be fitted later').click();
  await button('Write it into the book').click();
  await says(window, 'No papers wait in the tray.');
  await says(window, '4471-B');
  await says(window, '2208-A');
});

test('another paper is tied to the line that came of it', async () => {
  await choose(OTHER);
  await paper().click();
  const lines = window.$('//*[@id=//label[normalize-space()="Or it belongs to a line in the book"]/@for]');
  await lines.waitForExist();
  const wanted = await window.execute((select) => [...select.options].find(({ text }) => text.includes('28.10'))?.value, await lines);
  assert.ok(wanted, 'the purchase is offered');
  await lines.selectByAttribute('value', wanted);
  await button('Put it there').click();
  await says(window, 'No papers wait in the tray.');
  await window.$('[role="status"] a').click();
  // Its earlier versions are folded away, with the papers that they had.
  const shown = () => [...document.querySelectorAll('main img')].filter(
    (img) => !img.closest('details:not([open])') && img.complete && img.naturalWidth > 0,
  ).length;
  await window.waitUntil(async () => (await window.execute(shown)) === 2, { timeoutMsg: 'the line shows both papers' });
});

test('a PDF is saved as it came in, and a second time under another name', async () => {
  const invoice = join(shelf.path, 'invoice.pdf');
  const chromium = await browser();
  const shop = await chromium.newPage();
  await shop.setContent('<h1>Hollin Lane Motor Parts</h1>');
  await shop.pdf({ path: invoice });
  await chromium.close();
  await choose(invoice);
  await paper().click();
  await says(window, 'PDF of one page');
  for (const end of ['', '-2']) {
    await button('Save the PDF').click();
    const saved = new RegExp(`The PDF was written to (\\S+/documents/paper-\\d{4}-\\d\\d-\\d\\d${end}\\.pdf)\\.`);
    await says(window, saved);
    const [, path] = saved.exec(await window.$('body').getText());
    assert.deepEqual(readFileSync(path), readFileSync(invoice));
  }
});
