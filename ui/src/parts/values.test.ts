// What is the car's own, what is typical and what only the handbook knows are never mixed up.

import { describe, expect, it } from 'vitest';
import type { TypicalView, ValueView } from '../door/types';
import { boundsText, originsOf, originText, ownText, spokenValue, typicalText, valueName } from './values';

const torque: TypicalView = {
  case: 'thread-12-mm',
  bounds: { low: '65', high: '75' },
  unit: 'lbf·ft',
  newton_metres: { low: '88', high: '102' },
  source: { source: 'published', name: 'A wheel handbook' },
};
const value = (known: ValueView['known']): ValueView => ({ key: 'wheel-torque', unit: 'N·m', known });

describe('values', () => {
  it('stand as the owner typed them, with the unit that he left out', () => {
    expect(ownText({ text: '110', unit: 'N·m' })).toBe('110\u00a0N·m');
    expect(ownText({ text: '80 lbf·ft', unit: null })).toBe('80 lbf·ft');
  });

  it('lie between two ends, at one, or above one', () => {
    expect(boundsText({ low: '65', high: '75' }, 'lbf·ft')).toBe('65 to 75\u00a0lbf·ft');
    expect(boundsText({ low: '12.6', high: '12.6' }, 'V')).toBe('12.6\u00a0V');
    expect(boundsText({ low: '1.6', high: null }, 'mm')).toBe('at least 1.6\u00a0mm');
  });

  it('say their case and both units', () => {
    expect(typicalText(torque)).toBe('12 mm thread: 65 to 75\u00a0lbf·ft (88 to 102\u00a0N·m)');
    expect(typicalText({ ...torque, newton_metres: null, case: 'of a newer version' })).toBe('of a newer version: 65 to 75\u00a0lbf·ft');
  });

  it('say where they come from, each source once', () => {
    expect(originText({ source: 'from-memory', name: 'UN Regulation No. 100' })).toBe('UN Regulation No. 100 (from memory)');
    expect(originText({ source: 'common-practice', name: '' })).toBe('common practice of the trade');
    expect(originsOf([torque, torque])).toEqual(['A wheel handbook']);
  });

  it('are read out as what they are', () => {
    expect(spokenValue(value({ is: 'own', text: '110', unit: 'N·m' }))).toBe('Torque of the wheels: 110\u00a0N·m');
    expect(spokenValue(value({ is: 'handbook' }))).toContain('see the handbook');
    expect(spokenValue(value({ is: 'typical', cases: [torque] }))).toContain('only typical');
    expect(valueName('of a newer version')).toBe('of a newer version');
  });
});
