// The main job in the real window: WebKitGTK driven by WebKitWebDriver through tauri-driver.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { remote } from 'webdriverio';

const shelf = mkdtempSync(join(tmpdir(), 'wellkept-window-'));
let driver;
let window;

/** A port that was free a moment ago. */
function freePort() {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

async function ready(port) {
  for (let tries = 0; tries < 100; tries += 1) {
    const status = await fetch(`http://127.0.0.1:${port}/status`).catch(() => null);
    if (status?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('tauri-driver does not answer');
}

before(async () => {
  const port = await freePort();
  const args = ['--port', String(port), '--native-port', String(await freePort())];
  driver = spawn(process.env.TAURI_DRIVER, args, { stdio: ['ignore', 'ignore', 'inherit'] });
  await ready(port);
  window = await remote({
    hostname: '127.0.0.1',
    port,
    logLevel: 'error',
    capabilities: {
      'wdio:enforceWebDriverClassic': true,
      browserName: 'wry',
      'tauri:options': { application: process.env.WELLKEPT_WINDOW, args: ['--shelf', shelf] },
    },
  });
});

after(async () => {
  await window?.deleteSession();
  driver?.kill();
  rmSync(shelf, { recursive: true, force: true });
});

const button = (text) => window.$(`button=${text}`);

test('the first page says what the program is for', async () => {
  const heading = await window.$('h1');
  await heading.waitForDisplayed();
  assert.equal(await heading.getText(), 'A service book for your car');
});

test('a car goes in', async () => {
  const name = await window.$('input[maxlength="60"]');
  await name.waitForDisplayed();
  await name.setValue('Thistle');
  await (await window.$('select')).selectByAttribute('value', 'petrol');
  await (await window.$('input[inputmode="numeric"]')).setValue('98420');
  await (await button('Open its book')).click();
  await window.waitUntil(async () => /98\D420/.test(await (await window.$('body')).getText()));
});

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
