// Every place with an invented household in it, held against WCAG 2.2, levels A and AA, by axe: in light and in dark,
// on a phone and on a desk.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { axe, browser, folder, serve, wellkept } from './support.mjs';

const LEVELS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
const TODAY = '2026-06-01';
const PLACES = [
  'today', 'pump', 'counter', 'bay', 'bay/trouble', 'bay/guide%20oil-and-filter', 'book', 'book/card', 'book/running',
  'book/costs', 'book/measured', 'sheet', 'settings', 'add',
];
const SIZES = [{ width: 360, height: 740 }, { width: 1280, height: 900 }];

const targets = (nodes) => nodes.map(({ target }) => target.join(' '));

/**
 * A stop of the road bears its words on two lines, or in their place the number of its jobs as part of its shape. The
 * rule glues the lines together and takes the shape for a word, so that it does not find them in the name.
 */
const isGlued = ({ id, nodes }) => id === 'label-content-name-mismatch' && targets(nodes).every((target) => target.includes('.stop'));

const shelf = folder();
let server;
let chromium;

before(async () => {
  wellkept('--shelf', shelf.path, '--today', TODAY, 'demo');
  server = await serve(shelf.path, '--today', TODAY);
  chromium = await browser();
});

after(async () => {
  await chromium?.close();
  server?.stop();
  shelf.remove();
});

for (const [at, viewport] of SIZES.entries()) {
  const colorScheme = ['light', 'dark'][at];
  test(`every place at ${viewport.width} pixels in ${colorScheme}`, async () => {
    const page = await chromium.newPage({ viewport, colorScheme });
    await page.goto(server.address);
    const found = [];
    for (const place of PLACES) {
      await page.evaluate((to) => { location.hash = `#/${to}`; }, place);
      await page.reload();
      await page.getByRole('main').getByRole('heading').first().waitFor({ state: 'attached' });
      await page.waitForLoadState('networkidle');
      const { violations, passes } = await axe(page, ...LEVELS);
      found.push(...violations.filter((fault) => !isGlued(fault)).map(({ id, nodes }) => `${place}, ${id}: ${targets(nodes).join(', ')}`));
      assert.ok(passes.length > 10, `${place} was looked at`);
    }
    assert.deepEqual(found, []);
    await page.close();
  });
}
