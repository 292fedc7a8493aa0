// What a kind of fuel starts with, and what stays when another is chosen.

import { describe, expect, it } from 'vitest';
import type { FuelOfferView } from '../../door/types';
import { nothingRead } from '../../parts/from-paper';
import { differInUnits, emptyFuel, everyOffer, fuelOf, fuelOfPaper, hasFuel, offerOf, priceText, withKind } from './fuel';

const offers: FuelOfferView[] = [
  { kind: 'electric', unit: 'kilowatt-hour', units: ['kilowatt-hour'], currency: 'EUR', price: '0.39', amounts: [] },
  { kind: 'petrol', unit: 'us-gallon', units: ['litre', 'us-gallon', 'imperial-gallon'], currency: 'USD', price: '3.459', amounts: [] },
];
const [electric, petrol] = offers as [FuelOfferView, FuelOfferView];

describe('a kind', () => {
  it('starts with the unit and currency that were used for it last', () => {
    expect(emptyFuel(petrol)).toEqual({ kind: 'petrol', amount: '', unit: 'us-gallon', price: '', total: '', currency: 'USD', fill: 'full' });
  });

  it('is the first that is offered where it is not offered', () => {
    expect(offerOf(offers, 'petrol')).toBe(petrol);
    expect(offerOf(offers, 'diesel')).toBe(electric);
    expect(offerOf([], 'diesel').units).toEqual([]);
  });

  it('is asked for first only where it decides what is counted', () => {
    expect(differInUnits(offers)).toBe(true);
    expect(differInUnits([petrol, { ...petrol, kind: 'gas' }])).toBe(false);
    expect(differInUnits([])).toBe(false);
  });

  it('changes the unit where it must, and nothing that was typed', () => {
    const typed = { ...emptyFuel(petrol), amount: '12', currency: 'CAD' };
    expect(withKind(typed, electric)).toEqual({ ...typed, kind: 'electric', unit: 'kilowatt-hour' });
    expect(withKind({ ...typed, unit: 'litre', currency: '' }, petrol)).toMatchObject({ unit: 'litre', currency: 'USD' });
  });
});

it('a receipt in litres is of what is counted in litres', () => {
  const from = { ...nothingRead('p'), volume: '41.30', volumeUnit: 'litre', price: '1.689', cost: '69.76', currency: '' };
  expect(fuelOfPaper(offers, from)).toEqual({ kind: 'petrol', amount: '41.30', unit: 'litre', price: '1.689', total: '69.76', currency: 'USD', fill: 'full' });
  expect(fuelOfPaper(offers, nothingRead('p')).kind).toBe('electric');
});

it('a fill goes back into a form as it was typed, without what followed', () => {
  const view = { kind: 'petrol', amount: '41.300', unit: 'litre', price: null, price_follows: { number: '1.689', currency: 'EUR' }, total: { number: '69.76', currency: 'EUR' }, fill: 'part' };
  expect(fuelOf(view)).toEqual({ kind: 'petrol', amount: '41.300', unit: 'litre', price: '', total: '69.76', currency: 'EUR', fill: 'part' });
  const priced = { ...view, price: { number: '1.689', currency: 'CHF' }, price_follows: null, total: null };
  expect(fuelOf(priced)).toMatchObject({ price: '1.689', total: '', currency: 'CHF' });
});

it('every kind can be put right to every other, in its units', () => {
  const all = everyOffer('EUR');
  expect(all.map(({ kind }) => kind)).toEqual(['petrol', 'diesel', 'gas', 'electric']);
  for (const { unit, units } of all) expect(units).toContain(unit);
});

it('something stands there as soon as one of the three does', () => {
  const empty = emptyFuel(petrol);
  expect([empty, { ...empty, price: '3' }, { ...empty, total: '3' }, { ...empty, amount: '3' }].map(hasFuel)).toEqual([false, true, true, true]);
});

it('the last price is told only in the unit and currency that are on the form', () => {
  const form = emptyFuel(petrol);
  expect(priceText(offers, form)).toContain('3.459\u00a0USD');
  expect([{ ...form, unit: 'litre' }, { ...form, currency: 'CAD' }, { ...form, kind: 'gas' }].map((other) => priceText(offers, other))).toEqual(['', '', '']);
});
