// The languages of a card: which one it begins with, and under which names they stand.

import { expect, it } from 'vitest';
import { firstOf, LANGS, nameOf } from './card';

it.each([
  [['de-AT', 'en'], 'de'],
  [['tlh', 'FR-ca', 'es'], 'fr'],
  [['pt-BR'], 'en'],
  [[], 'en'],
])('of %j the card speaks %s', (wanted, lang) => {
  expect(firstOf(wanted)).toBe(lang);
});

// Unicode CLDR, names of languages.
it('each language stands under its own name', () => {
  expect(LANGS.map(nameOf)).toEqual(['English', 'Deutsch', 'français', 'español']);
});
