// What a thing to get says of itself, how much of it is left to buy, and the list as it is copied.

import { describe, expect, it } from 'vitest';
import type { GetView, PartView } from '../../../door/types';
import { amountToBuy, atHomeText, isAtHome, isInstead, lastText, listText, numberOf, usedTexts } from './needs';

const part: PartView = { name: 'Oil filter', maker: 'Quarrel', number: 'QF 20-118', quantity: '1', measure: 'piece', price: null, served: null, kind: '' };
const get: GetView = {
  item: { of: 'own', name: 'Roof rail' },
  supply: '',
  part,
  measure: 'piece',
  at_home: '',
  to_buy: '1',
  same: [],
  warning: null,
  workshop: '',
  day: '2024-10-03',
  paid: null,
  lasted: null,
};

describe('a row', () => {
  it('shows the number, or the name when there is none', () => {
    expect(numberOf(get)).toBe('QF 20-118');
    expect(numberOf({ ...get, part: { ...part, number: '' } })).toBe('Oil filter');
    expect(numberOf({ ...get, part: null })).toBe('');
  });

  it('shows the number to ask for in place of one that warns', () => {
    const newer = { ...get, warning: { mark: 'superseded', instead: 'QF 20-119' } };
    expect([numberOf(newer), isInstead(newer)]).toEqual(['QF 20-119', true]);
    expect(isInstead({ ...get, warning: { mark: 'wrong', instead: '' } })).toBe(false);
  });

  it('says the last price only when there was one', () => {
    expect(lastText(get)).not.toContain('EUR');
    const paid = { price: { number: '9.50', currency: 'EUR' }, quantity: '1', measure: 'piece', day: '2025-02-01', workshop: 'Fairlead' };
    const told = lastText({ ...get, paid });
    expect([told.includes('9.50\u00a0EUR'), told.includes('Fairlead'), told.includes('2025')]).toEqual([true, true, true]);
  });

  it('tells what is left to buy beside what is at home', () => {
    const plugs = { ...get, part: { ...part, quantity: '4' }, at_home: '1', to_buy: '3' };
    expect([amountToBuy(plugs), atHomeText(plugs), isAtHome(plugs)]).toEqual(['3 pieces', 'at home: 1 piece', false]);
    expect([atHomeText(get), isAtHome(get)]).toEqual(['', false]);
    expect(isAtHome({ ...plugs, at_home: '4', to_buy: '' })).toBe(true);
  });
});

describe('how long a part lasts', () => {
  it('tells time and distance of the last one, and since when the present one is in', () => {
    const lasted = { days: 426, distance: { count: 21_300, unit: 'km' as const } };
    expect(usedTexts({ ...get, lasted })).toEqual(['The last one lasted 14 months and 21\u00a0300\u00a0km', 'In since Oct 2024']);
  });

  it('tells a short time in days, and no distance that is not known', () => {
    expect(usedTexts({ ...get, lasted: { days: 60, distance: null } })[0]).toBe('The last one lasted 60 days');
    expect(usedTexts({ ...get, lasted: { days: 1, distance: null } })[0]).toBe('The last one lasted one day');
    expect(usedTexts({ ...get, lasted: { days: 61, distance: null } })[0]).toBe('The last one lasted 2 months');
  });

  it('tells nothing that the book does not know', () => {
    expect(usedTexts(get)).toEqual(['In since Oct 2024']);
    expect(usedTexts({ ...get, part: null, day: null })).toEqual([]);
  });
});

describe('the list', () => {
  it('has one plain line a part, with what is known of it', () => {
    const oil = { ...part, name: 'Engine oil', number: '', quantity: '4.2', measure: 'litre' };
    const washer = { ...get, part: null, supply: 'drain-washer', to_buy: '' };
    const needs = [get, { ...get, part: null }, { ...get, part: oil, measure: 'litre', to_buy: '4.2' }, washer];
    expect(listText(needs)).toBe('1 piece, Oil filter, Quarrel, QF 20-118\n4.2 litres, Engine oil, Quarrel\nNew washer for the drain plug');
  });

  it('leaves out what is at home, asks for what is missing, and warns', () => {
    const plugs = { ...get, part: { ...part, quantity: '4' }, at_home: '1', to_buy: '3', warning: { mark: 'superseded', instead: 'X9' } };
    expect(listText([{ ...get, at_home: '1', to_buy: '' }, plugs])).toBe('3 pieces, Oil filter, Quarrel, QF 20-118, Superseded; ask for X9');
  });

  it('is empty when no part is known', () => {
    expect(listText([{ ...get, part: null }])).toBe('');
  });
});
