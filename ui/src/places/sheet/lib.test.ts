// The plan in words, and the form that takes a handbook's interval.

import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../door/types';
import { handbookForm, planChange, planText } from './lib';

const line: PlanLine = {
  item: { of: 'catalogue', number: 1, key: 'engine-oil' },
  interval: { distance: { count: 15_000, unit: 'km' }, months: '12' },
  first: { distance: { count: 1_000, unit: 'mi' }, months: null },
  source: 'common-practice',
  source_name: '',
  off: false,
};

describe('handbookForm', () => {
  it('starts from what holds now, in the unit in which it was printed', () => {
    const form = handbookForm('km', line);
    expect(form.then).toEqual({ distance: '15000', unit: 'km', months: '12' });
    expect(form.first).toEqual({ distance: '1000', unit: 'mi', months: '' });
  });

  it('is empty, in the unit of the instrument, for an item of the owner', () => {
    expect(handbookForm('mi').then).toEqual({ distance: '', unit: 'mi', months: '' });
  });

  it('sends the first interval only when it differs', () => {
    expect(planChange(handbookForm('km', line))).toHaveProperty('first');
    expect(planChange({ ...handbookForm('km', line), differs: false })).not.toHaveProperty('first');
  });
});

it('says the interval, or that the item is off', () => {
  expect(planText(line)).toContain('12');
  expect(planText({ ...line, off: true })).not.toContain('12');
});
