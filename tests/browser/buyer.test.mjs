// A buyer scans the printed card: the page opens at the text read from the paper, and refuses a changed one.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { browser, folder, wellkept } from './support.mjs';

const VIEWER = pathToFileURL(join(import.meta.dirname, '../../ui/viewer/dist/index.html')).href;
const shelf = folder();
let chromium;
let car;
let digits;

before(async () => {
  const common = ['--shelf', shelf.path, '--today', '2026-06-01'];
  wellkept(...common, 'demo');
  [car] = JSON.parse(wellkept(...common, '--json', 'vehicles'));
  const pdf = join(shelf.path, 'card.pdf');
  wellkept(...common, '--vehicle', car.name, 'card', '--viewer', 'https://card.example/', '--out', pdf);
  execFileSync('pdftoppm', ['-r', '200', '-l', '1', '-png', '-singlefile', pdf, join(shelf.path, 'card')]);
  const text = execFileSync('zbarimg', ['--quiet', '--raw', join(shelf.path, 'card.png')], { encoding: 'utf8' });
  digits = text.trim().split('#')[1];
  chromium = await browser();
});

after(async () => {
  await chromium?.close();
  shelf.remove();
});

async function open(code) {
  const page = await chromium.newPage({ viewport: { width: 360, height: 740 } });
  const asked = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(`${VIEWER}#${code}`);
  await page.locator('h1').first().waitFor();
  return { page, asked };
}

test('the page shows the history that was printed, and asks nobody for anything', async () => {
  const { page, asked } = await open(digits);
  await page.getByText(car.name).first().waitFor();
  const said = await page.locator('body').innerText();
  assert.match(said, /unchanged since it was signed/i);
  assert.match(said, /2026/);
  assert.deepEqual(asked.filter((url) => !url.startsWith('file:') && !url.startsWith('data:')), []);
});

test('one changed digit, and nothing of the history is shown', async () => {
  const at = Math.floor(digits.length / 2);
  const changed = digits.slice(0, at) + ((Number(digits[at]) + 1) % 10) + digits.slice(at + 1);
  const { page } = await open(changed);
  await page.locator('textarea').waitFor();
  const said = await page.locator('body').innerText();
  assert.ok(!said.includes(car.name), said);
  assert.ok(!/unchanged since it was signed on/i.test(said), said);
});
