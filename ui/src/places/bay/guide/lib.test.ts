// A job finds its guide, and a guide hands on what it did.

import { describe, expect, it } from 'vitest';
import type { GuideLine, ItemView } from '../../../door/types';
import { guideName } from '../../../parts/bay';
import { guideText, toTick, workOf, writes } from './lib';

const item = (number: number, key: string): ItemView => ({ of: 'catalogue', number, key });
const oil = item(1, 'engine-oil');
const coolant = item(2, 'coolant');
const line = (key: string, does: ItemView[], finds: ItemView[] = []): GuideLine => ({ key, minutes: 60, does, finds });
const look = line('leak-look', [], [oil, coolant]);
const change = line('oil-and-filter', [oil]);

describe('a guide', () => {
  it('says its words by key, and the key alone where there are none', () => {
    expect(guideName('oil-and-filter')).toBe('Engine oil and filter');
    expect(guideText('oil-and-filter', 'step', 'cap')).toContain('filler cap');
    expect(guideText('oil-and-filter', 'step', 'of a newer version')).toBe('of a newer version');
  });

  it('hands on what it did, what it looked at and the parts without their price', () => {
    const part = { name: 'Oil filter', maker: 'Quarrel', number: 'Q5', quantity: '1', measure: 'piece', price: { number: '9', currency: 'EUR' }, served: null, kind: '' };
    const work = workOf({ guide: { ...change, finds: [coolant] }, parts: [part] });
    expect(work).toMatchObject({ items: [{ catalogue: 1 }], looked: [{ catalogue: 2 }], by: 'owner' });
    expect(work.parts[0]).toMatchObject({ number: 'Q5', price: '' });
    expect(writes(look)).toHaveLength(2);
    expect(writes(change)).toHaveLength(1);
  });

  it('asks its looks to be ticked by key', () => {
    expect(toTick({ cautions: [], steps: [], look: ['dry'] }).look).toEqual([{ key: 'dry' }]);
  });
});
