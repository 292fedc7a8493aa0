// The plan in words, and the form that takes a handbook's interval.

import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../door/types';
import { fittedParts, handbookForm, leftOffText, missingText, planChange, planParts, planText } from './lib';

const line: PlanLine = {
  item: { of: 'catalogue', number: 1, key: 'engine-oil' },
  interval: { distance: { count: 15_000, unit: 'km' }, months: '12' },
  first: { distance: { count: 1_000, unit: 'mi' }, months: null },
  after: [],
  tightened_by: [],
  goes_with: null,
  pinned: null,
  source: 'common-practice',
  source_name: '',
  off: false,
  left_off: null,
  stakes: 'engine',
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

  it('says what neglect costs of an own item alone', () => {
    expect(planChange(handbookForm('km', line))).not.toHaveProperty('stakes');
    const own = { ...line, item: { of: 'own' as const, name: 'Roof rack' }, stakes: 'safety' };
    expect(planChange(handbookForm('km', own))).toHaveProperty('stakes', 'safety');
    expect(planText(own, 'km')).toMatch(/At stake: Someone’s safety\.$/);
    expect(planText(line, 'km')).not.toContain('stake');
  });
});

it('starts empty where no interval is set', () => {
  expect(handbookForm('mi', { ...line, interval: null, first: null }).then).toEqual({ distance: '', unit: 'mi', months: '' });
});

it('says what tightened it, what it follows, or that it waits', () => {
  expect(planText({ ...line, tightened_by: ['dust', 'turbo'] }, 'km')).toMatch(/Shortened for dust and a turbocharged engine\.$/);
  expect(planText({ ...line, goes_with: { of: 'own', name: 'Sump oil' } }, 'km')).toMatch(/As often as Sump oil\.$/);
  expect(planText({ ...line, first: null, after: [{ of: 'own', name: 'Wheel change' }] }, 'km')).toMatch(/^Once, within .* after Wheel change, by common practice\.$/);
  expect(planText({ ...line, interval: null, first: null }, 'km')).toBe('No interval yet.');
});

it('lays the plan out by name, and finds in it without regard to case', () => {
  const own = (name: string, rest: Partial<PlanLine> = {}): PlanLine => ({ ...line, item: { of: 'own', name }, ...rest });
  const left_off = { day: '2026-01-02', by: '1a2b 3c4d', handed_over: '2026-03-04' };
  const plan = [own('Tyres'), own('Battery'), own('Road tax', { interval: null }), own('Axle oil', { off: true }), own('Wipers', { left_off })];
  const named = (words: string) => Object.values(planParts(plan, words)).map((lines: PlanLine[]) => lines.map(({ item }) => (item.of === 'own' ? item.name : '')));
  expect(named('')).toEqual([['Road tax'], ['Wipers'], ['Battery', 'Tyres'], ['Axle oil']]);
  expect(named(' tyr')).toEqual([[], [], ['Tyres'], []]);
});

it('says who had switched it off, and why a car does not need it', () => {
  const left_off = { day: '2026-01-02', by: '1a2b 3c4d', handed_over: '2026-03-04' };
  const text = leftOffText({ ...line, left_off }).replaceAll('\u00a0', ' ');
  expect(text).toBe('Switched off on 2 Jan 2026, before the book was handed over on 4 Mar 2026, with the key 1a2b 3c4d.');
  expect(leftOffText(line)).toBe('');
  const missing = { item: line.item, state: 'not-for-this-car' as const };
  expect(missingText({ ...missing, lacks: [] })).toBe('No car with this engine has it.');
  expect(missingText({ ...missing, lacks: ['timing-belt'] })).toBe('It does not have: Timing belt.');
});

it('tells what the car has, lacks and may have', () => {
  const fitted = [{ key: 'turbo', has: true }, { key: 'timing-belt', has: false }, { key: 'driven-rear-axle', has: null }];
  expect(fittedParts(fitted)).toEqual({ has: ['Turbocharger or supercharger'], lacks: ['Timing belt'], unknown: ['Rear- or all-wheel drive'] });
});

it('says every month, and a distance in the unit of the car as well', () => {
  expect(planText({ ...line, first: null, interval: { distance: null, months: '1' } }, 'km')).toBe('Every month, by common practice.');
  const text = planText(line, 'km').replaceAll('\u00a0', ' ');
  expect(text).toBe('The first time after 1 000 mi (about 1 610 km). Every 15 000 km or 12 months, whichever comes first, by common practice.');
});

it('says the interval, or that the item is off', () => {
  expect(planText(line, 'km')).toContain('12');
  expect(planText({ ...line, off: true }, 'km')).not.toContain('12');
});
