// The squares of the printed cards in a third reader that owes nothing to the other two: jsQR (npm), which web
// pages read with. zxing-cpp and zbar read them in tests/references.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import jsqr from 'jsqr';
import { folder, wellkept } from './support.mjs';

const TODAY = ['--today', '2026-06-01'];
const VIEWER = 'https://cards.example/v';
/** On which page of each size the square stands. */
const PAGES = { id1: 2, a6: 2, a5: 1, a4: 1 };
const DPI = [150, 200, 300];
/** Of the smallest card this reader needs more than the 2.4 dots a module that 150 to the inch give. */
const MISSED = 'id1 at 150';
const shelf = folder();

before(() => wellkept('--shelf', shelf.path, ...TODAY, 'demo'));
after(() => shelf.remove());

/** A page as red, green, blue and full cover, four bytes a dot. */
function raster(pdf, page, dpi) {
  const ppm = execFileSync('pdftoppm', ['-r', `${dpi}`, '-f', `${page}`, '-l', `${page}`, pdf], { maxBuffer: 2 ** 28 });
  const [head, width, height] = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(ppm.subarray(0, 64).toString('latin1'));
  const dots = ppm.subarray(head.length);
  const rgba = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let at = 0; at < width * height; at += 1) rgba.set(dots.subarray(3 * at, 3 * at + 3), 4 * at);
  return [rgba, Number(width), Number(height)];
}

for (const [size, page] of Object.entries(PAGES)) {
  test(`the square of the card of size ${size} is read`, () => {
    const pdf = join(shelf.path, `${size}.pdf`);
    wellkept('--shelf', shelf.path, ...TODAY, '--vehicle', 'The Barge', 'card', '--size', size, '--viewer', VIEWER, '--out', pdf);
    const read = DPI.map((dpi) => [`${size} at ${dpi}`, jsqr(...raster(pdf, page, dpi))?.data]);
    assert.deepEqual(read.filter(([, text]) => text === undefined).map(([name]) => name), size === 'id1' ? [MISSED] : []);
    const texts = new Set(read.flatMap(([, text]) => text ?? []));
    assert.equal(texts.size, 1);
    const [text] = texts;
    assert.ok(text.startsWith(`${VIEWER}#`));
    const file = join(shelf.path, `${size}.txt`);
    writeFileSync(file, text);
    const { name, verdicts } = JSON.parse(wellkept('card-read', file, '--json'));
    assert.deepEqual([name, verdicts.includes('unchanged')], ['The Barge', true]);
  });
}
