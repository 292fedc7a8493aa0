import { readdirSync, readFileSync } from 'node:fs';

import { describe, expect, it } from 'vitest';

import { ENGINES } from './claims';
import { harmless, isolated } from './dom';
import { type Language, NAMES, TAGS, Words } from './words';

const english = Words.for(['en-GB']);

describe('the words', () => {
  it('of English are those that the page says, no more and no fewer', () => {
    const folder = new URL('.', import.meta.url);
    const sources = readdirSync(folder).filter((file) => file.endsWith('.ts') && !file.includes('test'));
    const said = sources.flatMap((file) => [...readFileSync(new URL(file, folder), 'utf8').matchAll(/say\(\s*(?:[^'`)]*\? )?['`]([\w-]+)/g)]);
    const starts = said.map(([, id]) => id as string);
    const ids = NAMES.filter((name) => !/^\d+$/.test(name));
    expect(ids.filter((id) => !starts.some((start) => id === start || (start.endsWith('-') && id.startsWith(start))))).toEqual([]);
    expect(starts.filter((start) => !ids.some((id) => id === start || (start.endsWith('-') && id.startsWith(start))))).toEqual([]);
  });

  it('name every engine, refusal and item that a card can hold', () => {
    for (const engine of ENGINES) expect(english.say(`engine-${engine}`)).not.toBe('');
    for (const fault of ['digits-form', 'version', 'message', 'signature', 'stream', 'claims']) {
      expect(english.say(`refused-${fault}`)).toMatch(/\.$/);
    }
    expect(english.item(1)).toBe('Engine oil and filter');
    expect(english.item(60_000)).toBe('Item 60000');
    expect(english.item('tow bar wiring')).toBe('tow bar wiring');
  });

  it('write numbers and days as the reader does', () => {
    expect(english.distance(131_796, 'km')).toBe('131,796 km');
    expect(english.day(20_778)).toBe('21 November 2026');
    expect(english.day(-25_567)).toBe('1 January 1900');
    expect(english.say('visits-left-out', { count: 1 })).toMatch(/^One older visit /);
    expect(english.say('visits-left-out', { count: 1_234 })).toMatch(/^1,234 older visits /);
  });

  it('are those of the first language that the page has, or English', () => {
    expect(Words.for(['tlh', 'en-US']).day(0)).toBe('January 1, 1970');
    expect(Words.for([]).tag).toBe('en');
    expect(() => Words.for(['constructor', '__proto__']).say('title')).not.toThrow();
  });

  // Unicode CLDR, dates and numbers of Austria, France and Spain.
  it('are whole in four languages, each in the manner of the reader\'s region', () => {
    expect(TAGS).toEqual(['de', 'en', 'es', 'fr']);
    const shown = ['de-AT', 'fr-FR', 'es-ES'].map((locale) => {
      const words = Words.for([locale, 'en']);
      return [words.item(1), words.day(0), words.distance(131_796, 'km')];
    });
    expect(shown).toEqual([
      ['Motoröl und Filter', '1. Jänner 1970', '131\u00a0796 km'],
      ['Vidange et filtre à huile', '1 janvier 1970', '131\u202f796 km'],
      ['Aceite de motor y filtro', '1 de enero de 1970', '131.796 km'],
    ]);
    for (const tag of TAGS) for (const name of NAMES) expect(Words.for([tag]).say(name, { count: 2 })).not.toBe('');
  });

  it('fill in texts, numbers and choices', () => {
    const language: Language = new Map([
      ['one', ['a ', ['x'], '!']],
      ['many', [['n', { one: 'one', few: 'few' }, [['n'], ' of them']]]],
    ]);
    const words = new Words('cs', language, 'cs');
    expect(words.say('one', { x: '<b>' })).toBe('a <b>!');
    expect([1, 2, 5].map((n) => words.say('many', { n }))).toEqual(['one', 'few', '5 of them']);
    expect(() => words.say('none')).toThrow('no message');
  });
});

describe('a text out of a card', () => {
  it.each([
    ['Lupe', 'Lupe'],
    ['<img src=x onerror=alert(1)>', '<img src=x onerror=alert(1)>'],
    ['a\u0000b\nc\u007f', 'a\u2400b\u240ac\u2421'],
    ['\u202egnp.exe\u202c', '\ufffdgnp.exe\ufffd'],
    ['\u2066x\u2069\u200f\u061c', '\ufffdx\ufffd\ufffd\ufffd'],
    ['سيارة 🚗', 'سيارة 🚗'],
  ])('%j is shown as %j', (text, shown) => {
    expect(harmless(text)).toBe(shown);
  });

  it('keeps to itself inside a sentence', () => {
    expect(isolated('\u202egnp\u2069')).toBe('\u2068\ufffdgnp\ufffd\u2069');
  });
});
