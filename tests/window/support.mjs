// What the tests of the real window share: WebKitGTK driven by WebKitWebDriver through tauri-driver.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { remote } from 'webdriverio';
import { wellkept } from '../browser/support.mjs';

export function folder() {
  const path = mkdtempSync(join(tmpdir(), 'wellkept-window-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

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

/** Opens the window, started with these words. */
export async function openWindow(...args) {
  const port = await freePort();
  const ports = ['--port', String(port), '--native-port', String(await freePort())];
  const driver = spawn(process.env.TAURI_DRIVER, ports, { stdio: ['ignore', 'ignore', 'inherit'] });
  // A test that failed before it closed the window must not leave the driver running.
  process.once('exit', () => driver.kill());
  await ready(port);
  const window = await remote({
    hostname: '127.0.0.1',
    port,
    logLevel: 'error',
    waitforTimeout: 20_000,
    capabilities: {
      'wdio:enforceWebDriverClassic': true,
      browserName: 'wry',
      'tauri:options': { application: process.env.WELLKEPT_WINDOW, args },
    },
  });
  const close = async () => {
    await window.deleteSession();
    driver.kill();
  };
  return { window, close };
}

/** Waits until no program holds the shelf any more: a window that was closed takes a moment to end. */
export async function free(shelf) {
  for (let tries = 0; tries < 100; tries += 1) {
    try {
      return wellkept('--shelf', shelf, '--json', 'vehicles');
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
  }
  throw new Error('the shelf is still in use');
}

/** Waits until the page says this. */
export function says(window, words, timeout = 20_000) {
  const said = async () => {
    const text = await window.$('body').getText();
    return typeof words === 'string' ? text.includes(words) : words.test(text);
  };
  return window.waitUntil(said, { timeout, timeoutMsg: `the page does not say ${words}` });
}

export const go = (window, place) => window.execute((to) => { location.hash = `#/${to}`; }, place);

/** Fills in the page on which a car is added, and opens its book. */
export async function addCar(window, name, reading) {
  const field = await window.$('input[maxlength="60"]');
  await field.waitForDisplayed();
  await field.setValue(name);
  await window.$('select').selectByAttribute('value', 'petrol');
  await window.$('input[inputmode="numeric"]').setValue(reading);
  await window.$('button=Open its book').click();
  // With any mark between the thousands.
  await says(window, new RegExp(reading.replace(/(\d{3})$/, '\\D$1')));
}
