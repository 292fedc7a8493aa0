// What the choices of the card are, and with which of them it begins.

import type { CardLang, CardOptions, CardPaper, CardSize, VinShown } from '../../door/types';

export const SIZES: readonly CardSize[] = ['id1', 'a6', 'a5', 'a4'];
export const PAPERS: readonly CardPaper[] = ['own', 'a4', 'letter'];
export const VINS: readonly VinShown[] = ['whole', 'last-six', 'hidden'];

export const LANGS: readonly CardLang[] = ['en', 'de', 'fr', 'es'];

export const BEGIN: CardOptions = {
  size: 'a5',
  paper: 'own',
  vin: 'whole',
  hide_names: false,
  prices: false,
  lang: firstOf(globalThis.navigator?.languages ?? []),
};

/** The first of the languages that a reader wants in which a card can be printed, or English. */
export function firstOf(wanted: readonly string[]): CardLang {
  return wanted.flatMap((tag) => LANGS.filter((lang) => lang === tag.split('-')[0]?.toLowerCase()))[0] ?? 'en';
}

/** A language by its own name, under which whoever reads it looks for it. */
export function nameOf(lang: CardLang): string {
  return new Intl.DisplayNames(lang, { type: 'language' }).of(lang) ?? lang;
}

/** Whether a card of this size has the visits one by one, and with them the names of workshops and what was paid. */
export function listsVisits(size: CardSize): boolean {
  return size === 'a5' || size === 'a4';
}
