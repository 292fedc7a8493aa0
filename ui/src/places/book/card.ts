// What the choices of the card are, and with which of them it begins.

import type { CardLang, CardOptions, CardPaper, CardSize, ReportOptions, VinShown } from '../../door/types';
import { firstOf } from '../../words';

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
  lang: firstOf(LANGS),
};

/** A language by its own name, under which whoever reads it looks for it. */
export function nameOf(lang: CardLang): string {
  return new Intl.DisplayNames(lang, { type: 'language' }).of(lang) ?? lang;
}

/** The languages to choose from, for the card and for the report. */
export function langChoices(): { value: CardLang; label: string }[] {
  return LANGS.map((value) => ({ value, label: nameOf(value) }));
}

/** Whether a card of this size has the visits one by one, and with them the names of workshops and what was paid. */
export function listsVisits(size: CardSize): boolean {
  return size === 'a5' || size === 'a4';
}

/** Whether the photos of receipts may be printed: they would show the number or the names that are left out. */
export function mayShowReceipts(options: CardOptions): boolean {
  return options.vin === 'whole' && !options.hide_names;
}

/** What is chosen for the full report apart from the card. */
export interface OwnOfReport {
  receipts: boolean;
  prices: boolean;
  lang: CardLang;
}

/** The full report that leaves out what the card leaves out. */
export function reportOptions(card: CardOptions, own: OwnOfReport): ReportOptions {
  const { vin, hide_names } = card;
  return { vin, hide_names, prices: own.prices, without_receipts: !own.receipts, lang: own.lang };
}
