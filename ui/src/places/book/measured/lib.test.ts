// Measured values: the form, the limits, what has changed.

import { describe, expect, it } from 'vitest';
import type { ParameterView } from '../../../door/types';
import { driftText, jumpText, limitLines, limitsText, measuredForm, measuredSentence, pathOf, plottedOf, valueRows, withRead } from './lib';

const trim: ParameterView = {
  key: 'long-trim-1', unit: '%', limits: { low: '-10', high: '10', source: 'common practice' }, jumps: [], drift: null, learnt: false,
  points: [
    { subject: 'a', day: '2026-01-10', value: '2.3', milli: 2300, judgement: 'usual' },
    { subject: 'b', day: '2026-04-02', value: '12.5', milli: 12_500, judgement: 'high' },
    { subject: 'c', day: '2026-05-02', value: '250', milli: 250_000, judgement: 'implausible' },
  ],
};

describe('the form', () => {
  it('sends only what was typed', () => {
    const typed = { 'short-trim-1': '', 'long-trim-1': ' -4,7 ', coolant: '91' };
    expect(measuredForm('2026-05-01', typed, false)).toEqual({
      day: '2026-05-01', values: [{ parameter: 'long-trim-1', value: '-4,7' }, { parameter: 'coolant', value: '91' }], pasted: false,
    });
    expect(measuredForm('', {}, true).values).toEqual([]);
  });

  it('finds the field that a refusal means', () => {
    const typed = { 'short-trim-1': '', 'long-trim-1': '1', coolant: '900' };
    expect([pathOf(typed, 'coolant'), pathOf(typed, 'long-trim-1'), pathOf(typed, 'short-trim-1')]).toEqual(['measured.values.1.value', 'measured.values.0.value', '']);
  });

  it('takes over what was read and keeps the rest', () => {
    expect(withRead({ coolant: '90', 'idle-air': '2' }, [{ parameter: 'coolant', value: '91' }])).toEqual({ coolant: '91', 'idle-air': '2' });
  });
});

describe('the limits', () => {
  it('say whose they are', () => {
    expect(limitsText(trim.limits, '%')).toBe('Usually -10\u00a0% to 10\u00a0%, by common practice.');
    expect(limitsText({ low: '12.24', high: null, source: 'table of Quince' }, 'V')).toBe('Usually 12.24\u00a0V or more, after the table of Quince.');
    expect(limitsText({ low: null, high: '5', source: 'common practice' }, 'V')).toContain('5\u00a0V or less');
    expect(limitsText({ low: null, high: null, source: 'common practice' }, 'g/s')).toMatch(/^No one limit/);
    expect(limitLines(trim.limits)).toEqual([-10, 10]);
    expect(limitLines({ low: null, high: null, source: '' })).toEqual([]);
  });
});

describe('the values', () => {
  it('are drawn where they are plausible, with those outside told apart', () => {
    expect(plottedOf(trim).map(({ value, outside }) => [value, outside])).toEqual([[2.3, false], [12.5, true]]);
  });

  it('stand in the table, all of them', () => {
    expect(valueRows(trim).map(([, value, judged]) => [value, judged])).toEqual([['250\u00a0%', 'no instrument shows this'], ['12.5\u00a0%', 'higher than usual'], ['2.3\u00a0%', 'usual']]);
  });

  it('are told in a sentence', () => {
    expect(measuredSentence(trim)).toMatch(/^Long-term fuel trim, bank 1, 3 values from/);
    expect(measuredSentence({ ...trim, points: [] })).toBe('');
  });

  it('have jumped or drift by an amount with its sign, never one number for a drift', () => {
    expect(jumpText({ since: '2026-04-02', raised: '2026-05-01', size: '8.75' }, '%')).toContain('+8.75\u00a0%');
    expect(driftText({ low: '-6.5', high: '-2.251' }, '%')).toContain('between −6.5\u00a0% and −2.3\u00a0%');
  });
});
