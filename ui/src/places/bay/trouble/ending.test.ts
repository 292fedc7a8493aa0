// The likeliest causes are offered, every cause can be chosen, and so can none of them.

import { describe, expect, it } from 'vitest';
import type { SuspectView } from '../../../door/types';
import { causeOptions, endOffers, mendItems, UNKNOWN_CAUSE } from './ending';

const plug = { of: 'catalogue', number: 4, key: 'spark-plugs' } as const;
const suspects: SuspectView[] = [
  { cause: 'vacuum-leak', chance: 500, before: false, mend: { by: 'owner' } },
  { cause: 'throttle-body-dirty', chance: 200, before: false, mend: { by: 'items', items: [plug] } },
  { cause: 'turbo-worn', chance: 100, before: false, mend: { by: 'workshop' } },
  { cause: 'air-filter-clogged', chance: 50, before: false, mend: { by: 'owner' } },
];

describe('the end of a trouble', () => {
  it('offers the likeliest, in their order', () => {
    expect(endOffers(suspects)).toEqual(['vacuum-leak', 'throttle-body-dirty', 'turbo-worn']);
  });

  it('offers nothing that is hardly likely, but always the likeliest', () => {
    expect(endOffers(suspects.map((one) => ({ ...one, chance: one.chance / 10 })))).toEqual(['vacuum-leak']);
    expect(endOffers(suspects.map((one, place) => (place === 0 ? { ...one, chance: 900 } : { ...one, chance: 5 })))).toEqual(['vacuum-leak']);
  });

  it('lets every cause be chosen by name, and none of them', () => {
    const options = causeOptions(suspects);
    expect(options.slice(0, 2).map(({ value }) => value)).toEqual(['', UNKNOWN_CAUSE]);
    const names = options.slice(2).map(({ label }) => label);
    expect(names).toHaveLength(4);
    expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b)));
  });

  it('has items only where items mend it', () => {
    expect(suspects.map((one) => mendItems(one).length)).toEqual([0, 1, 0, 0]);
    expect(mendItems(undefined)).toEqual([]);
  });
});
