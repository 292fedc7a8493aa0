// The choices of a card: the language it begins with, and what the full report leaves out with it.

import { describe, expect, it } from 'vitest';
import { firstOf } from '../../words';
import { BEGIN, LANGS, mayShowReceipts, nameOf, reportOptions } from './card';

it.each([
  [['de-AT', 'en'], 'de'],
  [['tlh', 'FR-ca', 'es'], 'fr'],
  [['pt-BR'], 'en'],
  [[], 'en'],
])('of %j the card speaks %s', (wanted, lang) => {
  expect(firstOf(LANGS, wanted)).toBe(lang);
});

// Unicode CLDR, names of languages.
it('each language stands under its own name', () => {
  expect(LANGS.map(nameOf)).toEqual(['English', 'Deutsch', 'français', 'español']);
});

describe('the full report', () => {
  it('shows no receipt where the card leaves the number or the names out, in whole or in part', () => {
    expect(mayShowReceipts(BEGIN)).toBe(true);
    expect(mayShowReceipts({ ...BEGIN, vin: 'last-six' })).toBe(false);
    expect(mayShowReceipts({ ...BEGIN, vin: 'hidden' })).toBe(false);
    expect(mayShowReceipts({ ...BEGIN, hide_names: true })).toBe(false);
  });

  it('leaves out what the card does, and has prices, receipts and a language of its own', () => {
    const card = { ...BEGIN, vin: 'last-six', hide_names: true, prices: true } as const;
    expect(reportOptions(card, { receipts: true, prices: false, lang: 'de' })).toEqual({
      vin: 'last-six',
      hide_names: true,
      prices: false,
      without_receipts: false,
      lang: 'de',
    });
    const own = { receipts: false, prices: true, lang: 'fr' } as const;
    expect(reportOptions(BEGIN, own)).toMatchObject({ without_receipts: true, prices: true, lang: 'fr' });
  });
});
