// The fuel part of the Pump's form: what a kind starts with, what is kept of an older draft, what is worth sending.

import type { FuelForm, FuelOfferView, FuelView } from '../../door/types';
import { money } from '../../format';
import type { FromPaper } from '../../parts/from-paper';
import { say } from '../../words';

/** What can be chosen for one kind. */
export type Offer = Pick<FuelOfferView, 'kind' | 'unit' | 'units' | 'currency'>;

/** The units of everything that flows, and of electricity. */
export const VOLUMES = ['litre', 'us-gallon', 'imperial-gallon'] as const;
export const ENERGIES = ['kilowatt-hour'] as const;

const NOTHING: Offer = { kind: '', unit: '', units: [], currency: '' };

/** Every kind with its units, for a fill that is put right: a mistaken kind is one of the things to put right. */
export function everyOffer(currency: string): Offer[] {
  const flowing = ['petrol', 'diesel', 'gas'].map((kind) => ({ kind, unit: VOLUMES[0], units: [...VOLUMES], currency }));
  return [...flowing, { kind: 'electric', unit: ENERGIES[0], units: [...ENERGIES], currency }];
}

/** The offer for a kind; the first one where the kind is not offered. */
export function offerOf(offers: Offer[], kind: string): Offer {
  return offers.find((offer) => offer.kind === kind) ?? offers[0] ?? NOTHING;
}

/** Whether the kind has to be chosen before the amount: they are not all counted in the same units. */
export function differInUnits(offers: Offer[]): boolean {
  return offers.some(({ units }) => units.join() !== offers[0]?.units.join());
}

/** A form in which nothing is typed yet, with what this kind was filled in last. */
export function emptyFuel({ kind, unit, currency }: Offer): FuelForm {
  return { kind, amount: '', unit, price: '', total: '', currency, fill: 'full' };
}

/** The form for another kind: the unit and the currency are those of that kind, and what was typed stays. */
export function withKind(fuel: FuelForm, offer: Offer): FuelForm {
  const unit = offer.units.includes(fuel.unit) ? fuel.unit : offer.unit;
  return { ...fuel, kind: offer.kind, unit, currency: fuel.currency || offer.currency };
}

/** What a pump's receipt tells; the kind is the first that is counted in the unit that is printed. */
export function fuelOfPaper(offers: Offer[], from: FromPaper): FuelForm {
  const fitting = offers.find(({ units }) => units.includes(from.volumeUnit)) ?? offerOf(offers, '');
  const fresh = emptyFuel(fitting);
  return {
    ...fresh,
    amount: from.volume,
    unit: from.volumeUnit || fresh.unit,
    price: from.price,
    total: from.cost,
    currency: from.currency || fresh.currency,
  };
}

/** A kept form with only what a form has today: an older version may have kept other things. */
export function keptFuel(fresh: FuelForm, kept: unknown): FuelForm {
  const old = (typeof kept === 'object' && kept !== null ? kept : {}) as Record<string, unknown>;
  const form = { ...fresh };
  for (const key of Object.keys(fresh) as (keyof FuelForm)[]) {
    const value = old[key];
    if (typeof value === 'string') form[key] = value;
  }
  return form;
}

/** A fill of the book as a form takes it back: only what was typed. */
export function fuelOf({ kind, amount, unit, price, total, fill }: FuelView): FuelForm {
  const currency = total?.currency ?? price?.currency ?? '';
  return { kind, amount, unit, price: price?.number ?? '', total: total?.number ?? '', currency, fill };
}

/** What one unit cost the last time, in the currency in which is paid now; empty where that is not known. */
export function priceText(offers: FuelOfferView[], { kind, unit, currency }: FuelForm): string {
  const last = offers.find((offer) => offer.kind === kind);
  if (!last?.price || last.unit !== unit || last.currency !== currency) return '';
  return say('fuel-price-last', { price: money({ number: last.price, currency }) });
}

/** Whether anything of amount, price and total stands there. */
export function hasFuel({ amount, price, total }: FuelForm): boolean {
  return amount !== '' || price !== '' || total !== '';
}
