// What a thing to get says of how long the last one lasted, and the list as it is copied.

import { describe, expect, it } from 'vitest';
import type { GetView, PartView } from '../../door/types';
import { listText, usedTexts } from './needs';

const part: PartView = { name: 'Oil filter', maker: 'Quarrel', number: 'QF 20-118', quantity: '1', measure: 'piece', price: null, served: null, kind: '' };
const get: GetView = { item: { of: 'own', name: 'Roof rail' }, part, workshop: '', day: '2024-10-03', lasted: null };

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
    const needs = [get, { ...get, part: null }, { ...get, part: oil }];
    expect(listText(needs)).toBe('1 piece, Oil filter, Quarrel, QF 20-118\n4.2 litres, Engine oil, Quarrel');
  });

  it('is empty when no part is known', () => {
    expect(listText([{ ...get, part: null }])).toBe('');
  });
});
