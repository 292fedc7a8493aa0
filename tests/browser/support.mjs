// What the browser tests share: the program, a served shelf, a browser.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { chromium } from 'playwright-core';

export const WELLKEPT = process.env.WELLKEPT;

/** The script of axe, to be run in a page. */
export const AXE = readFileSync(createRequire(new URL('../../ui/', import.meta.url)).resolve('axe-core/axe.min.js'), 'utf8');

export function folder() {
  const path = mkdtempSync(join(tmpdir(), 'wellkept-test-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

export function wellkept(...args) {
  return execFileSync(WELLKEPT, args, { encoding: 'utf8' });
}

/** Serves a shelf, with more options if given; answers the address that the program prints. */
export async function serve(shelf, ...options) {
  const args = ['--shelf', shelf, ...options, 'serve'];
  const server = spawn(WELLKEPT, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  // A test that failed before it stopped the server must not leave it running with the run's output in its hand.
  process.once('exit', () => server.kill());
  const address = await new Promise((resolve, reject) => {
    let said = '';
    server.stdout.on('data', (data) => {
      said += data;
      const found = said.match(/http:\/\/127\.0\.0\.1:\d+\/\?token=[0-9a-f]+/);
      if (found) resolve(found[0]);
    });
    server.on('exit', (code) => reject(new Error(`the server ended with ${code}`)));
  });
  return { address, stop: () => server.kill() };
}

const CHROMIUM = {
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [
    ...['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
    ...['--disable-background-networking', '--disable-component-update', '--disable-sync'],
  ],
};

export const browser = () => chromium.launch(CHROMIUM);

/** A browser with a profile of its own, which outlasts it. */
export const browserOn = (profile) => chromium.launchPersistentContext(profile, CHROMIUM);

/**
 * Draws the receipt of an invented shop, `day` as `28/05/2026`, and photographs it. The gross of its two lines of goods
 * is the total.
 */
export async function drawSlip(chromium, path, day) {
  const paper = await chromium.newPage({ viewport: { width: 780, height: 760 } });
  await paper.setContent(`<body style="margin:60px;font:26px monospace;background:#fff;color:#111">
    <p style="font-size:34px">HOLLIN LANE MOTOR PARTS</p><p>4 Hollin Lane, Otterby</p><p>Date ${day} 14:07</p>
    <table style="width:100%"><tr><td>Oil filter 4471-B<td align="right">9.65<tr><td>Air filter 2208-A<td align="right">18.45</table>
    <table style="width:100%;font-size:32px;margin-top:30px"><tr><td><b>TOTAL GBP</b><td align="right"><b>28.10</b></table>
    <p>VAT 20% included 4.68</p><p>Card 28.10</p></body>`);
  await paper.screenshot({ path, type: 'jpeg', quality: 90 });
  await paper.close();
}

/** Kills every process that was started with this folder in its command line, so that it has no time for anything. */
export function killAllOn(folder) {
  for (const id of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    try {
      if (readFileSync(`/proc/${id}/cmdline`, 'utf8').includes(folder)) process.kill(Number(id), 'SIGKILL');
    } catch {
      // It has ended by itself in the meantime.
    }
  }
}

/** Waits until nothing of it is there: what a page takes away, it may take away after what it puts there. */
export const gone = (locator) => locator.first().waitFor({ state: 'detached' });

/** Waits until a field holds this, and fails with what it held instead. */
export async function holds(field, wanted, message) {
  for (const until = Date.now() + 30_000; Date.now() < until && (await field.inputValue()) !== wanted; ) await setTimeout(50);
  assert.equal(await field.inputValue(), wanted, message);
}

/** What axe finds on a page, by these of its rules or levels. */
export async function axe(page, ...rules) {
  await page.evaluate(AXE);
  return page.evaluate((runOnly) => globalThis.axe.run(document, { runOnly }), rules);
}

/**
 * Everything that a page complains of from now on: errors of its scripts, and of its console unless they are
 * pardoned.
 */
export function listen(page, pardoned = () => false) {
  const complaints = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' && !pardoned(message.text())) complaints.push(message.text());
  });
  return complaints;
}

/** Reads the grave cautions of a page, or of a part of it, one by one. */
export async function readGrave(within) {
  const each = within.getByRole('button', { name: /^I have read it/ });
  while (await each.count()) await each.first().click();
}

/** Reads what can hurt: the grave cautions one by one, then the others, and goes on. */
export async function readCautions(page) {
  await page.getByRole('heading', { name: 'Before the first step' }).waitFor();
  await readGrave(page);
  await page.getByRole('button', { name: 'I have read this; go on' }).click();
}
