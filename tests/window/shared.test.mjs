// What another app shares, in the real window: the folder in which Android lays it is filled here by hand, and from
// there on everything is real.
import assert from 'node:assert/strict';
import { copyFileSync, mkdirSync, readdirSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { after, before, test } from 'node:test';
import { AXE } from '../browser/support.mjs';
import { addCar, folder, free, go, openWindow, says } from './support.mjs';

/** Real pictures that differ; what is on them does not matter here. */
const picture = (name) => fileURLToPath(new URL(`../../icons/${name}`, import.meta.url));

const shelf = folder();
const shared = join(shelf.path, 'shared');
let opened;
let window;

before(async () => {
  mkdirSync(shared);
  copyFileSync(picture('32x32.png'), join(shared, '001.paper'));
  writeFileSync(join(shared, '002.paper'), 'this is no picture');
  writeFileSync(join(shared, '003.part'), 'half of one');
  opened = await openWindow('--shelf', shelf.path);
  window = opened.window;
});

after(async () => {
  await opened?.close();
  shelf.remove();
});

const button = (text) => window.$(`button=${text}`);

/** Lays a picture down as the app does on Android: under its name only when it is whole. */
function lay(name, as) {
  copyFileSync(picture(name), join(shared, `${as}.part`));
  renameSync(join(shared, `${as}.part`), join(shared, `${as}.paper`));
}

/** Shares a picture while the window is open, and says so as the app does on Android. */
async function share(name, as) {
  lay(name, as);
  await window.execute(() => { window.dispatchEvent(new Event('shared')); });
}

/** What axe finds on the page, by the levels that all places keep to. */
async function faults() {
  await window.execute(AXE);
  const values = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
  const found = await window.executeAsync((runOnly, done) => {
    globalThis.axe.run(document, { runOnly }).then(({ violations, passes }) => done({ violations: violations.map(({ id }) => id), passes: passes.length }));
  }, { type: 'tag', values });
  assert.ok(found.passes > 0, 'axe looked at something');
  return found.violations;
}

test('without a car everything waits', async () => {
  await says(window, '2 shared files wait for a car');
  assert.deepEqual(readdirSync(shared).sort(), ['001.paper', '002.paper', '003.part']);
});

test('with its car the photo arrives in the tray, and the broken file is refused by name', async () => {
  await addCar(window, 'Thistle', '98420');
  await says(window, 'One shared paper is in the tray of Thistle.');
  await says(window, /Shared file 2\s+The file is no JPEG, PNG or WebP photo and no PDF/);
  assert.deepEqual(readdirSync(shared), ['003.part'], 'what is half copied is not touched');
  assert.deepEqual(await faults(), []);
  await button('Sort them out').click();
  await says(window, 'One paper waits in the tray.');
  await window.$('button[aria-label^="Open the paper of"] img').waitForDisplayed();
});

test('what is shared while the tray is open shows there', async () => {
  await share('128x128.png', '004');
  await says(window, '2 papers wait in the tray.');
  await button('Close').click();
});

test('what was shared while the window was out of sight is found when it comes back', async () => {
  lay('icon.png', '0041');
  await window.execute(() => { document.dispatchEvent(new Event('visibilitychange')); });
  await says(window, '3 papers wait in the tray.');
});

test('of two cars one is chosen before anything is taken in', async () => {
  await go(window, 'add');
  await addCar(window, 'Bramble', '12300');
  await share('128x128@2x.png', '005');
  await window.$('dialog').waitForDisplayed();
  await says(window, 'For which car is the shared file?');
  assert.deepEqual(await faults(), []);
  assert.ok(readdirSync(shared).includes('005.paper'));
  await button('Later').click();
  await says(window, 'One shared file waits.');
  assert.ok(readdirSync(shared).includes('005.paper'));
  await button('Choose the car').click();
  await window.$('dialog').$('button*=Thistle').click();
  await says(window, 'One shared paper is in the tray of Thistle.');
  await button('Sort them out').click();
  await says(window, '4 papers wait in the tray.');
});

test('what was shared by mistake is left out', async () => {
  await share('icon.png', '006');
  await window.$('dialog').waitForDisplayed();
  await button('Later').click();
  await button('Leave it out').click();
  await window.waitUntil(async () => !(await window.$('body').getText()).includes('One shared file waits.'));
  assert.deepEqual(readdirSync(shared), ['003.part']);
});

test('a file with which the program is started goes the same way, and stays where it is', async () => {
  await opened.close();
  await free(shelf.path);
  const slip = join(shelf.path, 'slip of the shop.png');
  copyFileSync(picture('icon.png'), slip);
  opened = await openWindow('--shelf', shelf.path, slip, join(shelf.path, 'gone.png'));
  window = opened.window;
  await says(window, 'For which car are the 2 shared files?');
  await window.$('dialog').$('button*=Bramble').click();
  await says(window, 'One shared paper is in the tray of Bramble.');
  await says(window, /gone\.png\s+.*could not be read/);
  assert.ok(readdirSync(shelf.path).includes('slip of the shop.png'));
});
