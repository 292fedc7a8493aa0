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
let read;

before(async () => {
  const common = ['--shelf', shelf.path, '--today', '2026-06-01'];
  wellkept(...common, 'demo');
  [car] = JSON.parse(wellkept(...common, '--json', 'vehicles'));
  const pdf = join(shelf.path, 'card.pdf');
  wellkept(...common, '--vehicle', car.name, 'card', '--viewer', 'https://card.example/', '--out', pdf);
  execFileSync('pdftoppm', ['-r', '200', '-l', '1', '-png', '-singlefile', pdf, join(shelf.path, 'card')]);
  const text = execFileSync('zbarimg', ['--quiet', '--raw', join(shelf.path, 'card.png')], { encoding: 'utf8' });
  digits = text.trim().split('#')[1];
  read = JSON.parse(wellkept(...common, '--json', 'card-read', pdf));
  chromium = await browser();
});

after(async () => {
  await chromium?.close();
  shelf.remove();
});

async function open(code, locale = 'en-GB') {
  const page = await chromium.newPage({ viewport: { width: 360, height: 740 }, locale });
  const asked = [];
  page.on('request', (request) => asked.push(request.url()));
  // What to ask depends on the day, and the program was told which it is.
  await page.clock.setFixedTime(new Date('2026-06-01T12:00:00'));
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

test('the page asks what the program asks, and lists the visits that it lists', async () => {
  const { page } = await open(digits);
  await page.waitForFunction(() => document.querySelector('[aria-busy]') === null);
  const questions = await page.locator('.ask li').allInnerTexts();
  assert.ok(read.questions.length > 2);
  assert.equal(questions.length, read.questions.length);
  const receipts = read.questions.find(({ key }) => key === 'receipts');
  assert.ok(questions.some((said) => said.includes(`${receipts.count} of ${receipts.of}`)), questions.join('\n'));
  assert.equal(await page.locator('.visits ol > li').count(), read.visits.length);
  assert.equal(read.verdicts[0], 'unchanged');
});

test('a German phone is spoken to in German alone, of a card that was printed in French, until its owner chooses', async () => {
  const pdf = join(shelf.path, 'french.pdf');
  const common = ['--shelf', shelf.path, '--today', '2026-06-01', '--vehicle', car.name];
  wellkept(...common, 'card', '--lang', 'fr', '--viewer', 'https://card.example/', '--out', pdf);
  assert.match(execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' }), /Prochaines échéances/);
  execFileSync('pdftoppm', ['-r', '200', '-l', '1', '-png', '-singlefile', pdf, join(shelf.path, 'french')]);
  const text = execFileSync('zbarimg', ['--quiet', '--raw', join(shelf.path, 'french.png')], { encoding: 'utf8' });
  assert.equal(text.trim().split('#')[1], digits, 'what is signed knows no language');

  const { page, asked } = await open(digits, 'de-DE');
  await page.waitForFunction(() => document.querySelector('[aria-busy]') === null);
  assert.equal(await page.getAttribute('html', 'lang'), 'de');
  assert.equal(await page.locator('select').inputValue(), 'de');
  const said = await page.locator('main').innerText();
  assert.match(said, /Unverändert, seit die Karte am 1\. Juni 2026 mit dem Schlüssel/);
  assert.match(said, /Das beweist nicht, dass die Arbeiten ausgeführt wurden/);
  assert.match(said, /Motoröl und Filter/);
  assert.doesNotMatch(said, /\b(the|visits?|book|reading|owner|workshop)\b/);
  assert.equal(await page.locator('.ask li').count(), read.questions.length);
  assert.match(await page.title(), /Fahrzeughistorie$/);

  await page.locator('select').selectOption('es');
  await page.getByText('Firma comprobada').waitFor();
  assert.equal(await page.getAttribute('html', 'lang'), 'es');
  await page.emulateMedia({ media: 'print' });
  assert.equal(await page.locator('select').isVisible(), false, 'a choice is of no use on paper');
  assert.deepEqual(asked.filter((url) => !url.startsWith('file:') && !url.startsWith('data:')), []);
});

test('another card of the same car is held against this one, and so is one of another car', async () => {
  const { page } = await open(digits);
  const compare = async (car, today) => {
    const pdf = join(shelf.path, 'other.pdf');
    wellkept('--shelf', shelf.path, '--today', today, '--vehicle', car, 'card', '--viewer', 'https://card.example/', '--out', pdf);
    execFileSync('pdftoppm', ['-r', '200', '-l', '1', '-png', '-singlefile', pdf, join(shelf.path, 'other')]);
    const text = execFileSync('zbarimg', ['--quiet', '--raw', join(shelf.path, 'other.png')], { encoding: 'utf8' });
    await page.locator('.compare [role=status]').evaluate((status) => status.replaceChildren());
    await page.locator('textarea').fill(text);
    await page.locator('.compare button').first().click();
    await page.locator('.compare [role=status] p').first().waitFor();
    return page.locator('.compare [role=status]').innerText();
  };
  assert.match(await compare(car.name, '2026-06-02'), /contains that of .* unchanged: \d+ visits are the same/);
  const vehicles = JSON.parse(wellkept('--shelf', shelf.path, '--json', 'vehicles'));
  const other = vehicles.find(({ name }) => name !== car.name);
  assert.match(await compare(other.name, '2026-06-01'), /identification numbers differ/);
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
