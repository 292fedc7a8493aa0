// What the choices of the card are, and with which of them it begins.

import type { CardOptions, CardPaper, CardSize, VinShown } from '../../door/types';

export const SIZES: readonly CardSize[] = ['id1', 'a6', 'a5', 'a4'];
export const PAPERS: readonly CardPaper[] = ['own', 'a4', 'letter'];
export const VINS: readonly VinShown[] = ['whole', 'last-six', 'hidden'];

export const BEGIN: CardOptions = { size: 'a5', paper: 'own', vin: 'whole', hide_names: false, prices: false };

/** Whether a card of this size has the visits one by one, and with them the names of workshops and what was paid. */
export function listsVisits(size: CardSize): boolean {
  return size === 'a5' || size === 'a4';
}
