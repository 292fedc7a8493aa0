// The main job in the real window: WebKitGTK driven by WebKitWebDriver through tauri-driver.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { addCar, folder, openWindow } from './support.mjs';

const shelf = folder();
let opened;
let window;

before(async () => {
  opened = await openWindow('--shelf', shelf.path);
  window = opened.window;
});

after(async () => {
  await opened?.close();
  shelf.remove();
});

const button = (text) => window.$(`button=${text}`);

test('the first page says what the program is for', async () => {
  const heading = await window.$('h1');
  await heading.waitForDisplayed();
  assert.equal(await heading.getText(), 'A service book for your car');
});

test('a car goes in', () => addCar(window, 'Thistle', '98420'));

test('what nobody recorded stands on its plan', async () => {
  const oil = await window.$('section[aria-labelledby="due"]').$('li*=Engine oil and filter');
  await oil.waitForDisplayed();
  assert.match(await oil.getText(), /No record/i);
});

test('a reading goes in and is in the book', async () => {
  await window.execute(() => { location.hash = '#/pump'; });
  for (const digit of ['4', '3', '1']) {
    const key = await button(digit);
    await key.waitForDisplayed();
    await key.click();
  }
  await (await button('Save')).click();
  await window.waitUntil(async () => /98\D431/.test(await (await window.$('body')).getText()));
  assert.match(await window.getTitle(), /Wellkept$/);
});
