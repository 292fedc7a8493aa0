// The PDF of a card of 120 visits beside headless Chromium printing the same pages: in turns, on this machine, both warm.
// Not a test, because a busy machine would fail it:
//
//     SHEET=PROGRAM node browser/card-speed.mjs [ROUNDS]
//
// PROGRAM is the bench binary of the crate card, as `cargo bench -p card --bench sheet --no-run` names it. Chromium prints
// the card's own pages, which the core draws as SVG for its preview, and, as it may be quicker with text than with drawn
// letters, once more their words alone (poppler's pdftotext must be there); the faster counts. Loading is not counted.
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { browser } from './support.mjs';

const PROGRAM = process.env.SHEET;
if (!PROGRAM) throw new Error('SHEET must name the bench binary of the crate card');
const ROUNDS = Number(process.argv[2] ?? 21);
const WARM_UP = 3;

await main();

async function main() {
  const folder = mkdtempSync(join(tmpdir(), 'card-speed-'));
  const core = spawn(PROGRAM, ['--beside', 'pdf'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const chromium = await browser();
  try {
    spawnSync(PROGRAM, ['--pages', folder], { stdio: 'inherit' });
    const pages = readdirSync(folder).filter((name) => name.endsWith('.svg')).sort();
    const drawn = pages.map((name) => readFileSync(join(folder, name), 'utf8'));
    const sides = {
      core: answers(core),
      'Chromium, pages as drawn': await printing(chromium, drawn.map((svg) => `<section>${svg}</section>`).join('')),
      'Chromium, words as text': await printing(chromium, words(folder)),
    };
    const times = Object.values(sides).map(() => []);
    for (let round = -WARM_UP; round < ROUNDS; round++) {
      for (const [at, side] of Object.values(sides).entries()) {
        const time = await side();
        if (round >= 0) times[at].push(time);
      }
    }
    Object.keys(sides).forEach((name, at) => console.log(`${name}: ${median(times[at]).toFixed(1)} ms`));
    const [ours, ...theirs] = times.map(median);
    console.log(`${pages.length} pages, ${ROUNDS} rounds, medians; Chromium takes ${(Math.min(...theirs) / ours).toFixed(1)} times as long`);
  } finally {
    core.stdin.end();
    await chromium.close();
    rmSync(folder, { recursive: true });
  }
}

/** Asks the core for one PDF and returns its milliseconds. */
function answers(core) {
  const lines = createInterface({ input: core.stdout })[Symbol.asyncIterator]();
  return async () => {
    core.stdin.write('\n');
    return Number((await lines.next()).value);
  };
}

async function printing(chromium, body) {
  const page = await chromium.newPage();
  await page.setContent(`<style>@page { size: A5; margin: 0 } section { break-after: page; overflow: hidden }</style>${body}`);
  return async () => {
    const start = performance.now();
    await page.pdf({ preferCSSPageSize: true });
    return performance.now() - start;
  };
}

/** The words of every page, in lines and without the square: less than the card has. */
function words(folder) {
  const { stdout } = spawnSync('pdftotext', ['-layout', join(folder, 'card.pdf'), '-'], { encoding: 'utf8' });
  return stdout.split('\f').filter((page) => page.trim()).map((page) => `<section><pre>${page}</pre></section>`).join('');
}

function median(times) {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)];
}
