// Every word that the ui says is there, in English, and the list of their names is fresh.

import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { ids } from '../scripts/words.mjs';
import { list, say, sayKey } from './words';

const source = new URL('.', import.meta.url);
const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(svelte|ts)$/.test(name) && !/\.test\.ts$|words\/ids\.ts$/.test(name))
  .map((name) => ({ name, text: readFileSync(new URL(name, source), 'utf8') }));

describe('the words', () => {
  it('are listed as they stand; `npm run words` lists them anew', () => {
    expect(readFileSync(new URL('words/ids.ts', source), 'utf8')).toBe(ids());
  });

  it('are all there that the code names', () => {
    const named = files.flatMap(({ text }) => [...text.matchAll(/\bsay(?:Key)?\(\s*'([^']+)'/g)].map(([, id]) => id ?? ''));
    expect(named.length).toBeGreaterThan(200);
    expect(named.filter((id) => sayKey(id) === undefined)).toEqual([]);
  });

  it('are all used: by name, or by the start of a name that is put together', () => {
    const all = files.map(({ text }) => text).join('\n');
    const starts = [...all.matchAll(/`([a-z-]+-)\$\{/g)].map(([, start]) => start ?? '');
    const known = [...ids().matchAll(/^ {2}'([^']+)'/gm)].map(([, id]) => id ?? '');
    const unused = known.filter((id) => !all.includes(`'${id}'`) && !starts.some((start) => id.startsWith(start)));
    expect(unused).toEqual([]);
  });

  it('stand in no file of code: every text between tags comes from Fluent', () => {
    const bare = files
      .filter(({ name }) => name.endsWith('.svelte'))
      .flatMap(({ name, text }) => bareWords(text).map((word) => `${name}: ${word}`));
    expect(bare).toEqual([]);
  });
});

it('says a message with what it takes, and a list in the language', () => {
  expect(say('reading-on', { reading: '96 300 km', day: '12 Oct 2026' })).toBe('96 300 km on 12 Oct 2026');
  expect(list(['one', 'two', 'three'])).toMatch(/^one, two,? and three$/);
  expect(sayKey('no-such-message')).toBeUndefined();
});

it('says what stands in a file that is read late, before and after it was read', () => {
  expect(sayKey('guide-oil-and-filter')).toBe('Engine oil and filter');
  expect(sayKey('symptom-rough-idle')).toBe('Rough idle');
  expect(sayKey('place-bay')).toBe('Bay');
});

it('speaks no language by halves: with the card’s words alone in German, a German device is spoken to in English', async () => {
  vi.stubGlobal('navigator', { languages: ['de-DE', 'de', 'en-GB'] });
  vi.resetModules();
  try {
    const words = await import('./words');
    expect(words.language).toBe('en');
    expect(words.sayKey('item-engine-oil')).toBe('Engine oil and filter');
  } finally {
    vi.unstubAllGlobals();
  }
});

/** The words in the markup of a component that stand outside tags, braces, styles and scripts. */
function bareWords(component: string): string[] {
  let markup = component
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/<(script|style)[\s\S]*?<\/\1>/g, '');
  for (let before = ''; before !== markup; ) [before, markup] = [markup, markup.replace(/\{[^{}]*\}/g, '')];
  return markup.replace(/<[^>]*>/g, '').match(/[A-Za-z]{2,}/g) ?? [];
}
