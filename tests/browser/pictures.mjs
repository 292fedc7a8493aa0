// The README's pictures, taken of the real core and page with the demo in it: the five places at phone size, Today
// by lamplight too, and the first page of the printed card. `cargo xtask pictures` runs it.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { browser, folder, serve, wellkept } from './support.mjs';

const TODAY = '2026-06-01';
const PLACES = ['today', 'pump', 'counter', 'bay', 'book'];
const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2 };
const CARD_DPI = 110;
const MOST_BYTES = 120_000;
/** Quality 1 is lossless, which suits a flat page; a picture that stays too large is written with some loss. */
const QUALITIES = [1, 0.9, 0.8, 0.7];

const pictures = join(dirname(fileURLToPath(import.meta.url)), '../../ui/pictures');

async function main() {
  mkdirSync(pictures, { recursive: true });
  const shelf = folder();
  const common = ['--shelf', shelf.path, '--today', TODAY];
  wellkept(...common, 'demo');
  const chromium = await browser();
  try {
    await takePlaces(chromium, shelf.path);
    const [car] = JSON.parse(wellkept(...common, '--json', 'vehicles'));
    const card = join(shelf.path, 'card');
    wellkept(...common, '--vehicle', car.name, 'card', '--viewer', 'https://card.example/', '--out', `${card}.pdf`);
    execFileSync('pdftoppm', ['-r', String(CARD_DPI), '-f', '1', '-singlefile', '-png', `${card}.pdf`, card]);
    await keep(await chromium.newPage(), 'card', readFileSync(`${card}.png`));
  } finally {
    await chromium.close();
    shelf.remove();
  }
}

async function takePlaces(chromium, shelf) {
  const server = await serve(shelf, '--today', TODAY);
  try {
    const page = await chromium.newPage({ ...PHONE, colorScheme: 'light', reducedMotion: 'reduce' });
    const writer = await chromium.newPage();
    await page.goto(server.address);
    for (const place of PLACES) await keep(writer, place, await take(page, place));
    await page.emulateMedia({ colorScheme: 'dark' });
    await keep(writer, 'today-dark', await take(page, 'today'));
  } finally {
    server.stop();
  }
}

/** What a place looks like once its fonts, its screen and the photos on it are there. */
async function take(page, place) {
  await page.evaluate((to) => { location.hash = `#/${to}`; }, place);
  await page.locator('main h1, main h2, main label').first().waitFor();
  await page.waitForLoadState('networkidle');
  await page.evaluate(async () => {
    await document.fonts.ready;
    const inView = [...document.images].filter((image) => image.getBoundingClientRect().top < innerHeight);
    await Promise.all(inView.map((image) => image.decode()));
  });
  return page.screenshot();
}

/** Writes a picture as WebP, which the browser itself encodes, in the best quality that is small enough. */
async function keep(page, name, png) {
  for (const quality of QUALITIES) {
    const webp = Buffer.from(await page.evaluate(toWebp, { png: png.toString('base64'), quality }), 'base64');
    if (webp.length > MOST_BYTES) continue;
    writeFileSync(join(pictures, `${name}.webp`), webp);
    console.log(`   ui/pictures/${name}.webp: ${Math.ceil(webp.length / 1000)} kB`);
    return;
  }
  throw new Error(`${name} stays larger than ${MOST_BYTES} bytes; show less on it`);
}

/** Runs in the browser. */
async function toWebp({ png, quality }) {
  const image = new Image();
  image.src = `data:image/png;base64,${png}`;
  await image.decode();
  const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height });
  canvas.getContext('2d').drawImage(image, 0, 0);
  return canvas.toDataURL('image/webp', quality).split(',')[1];
}

await main();
