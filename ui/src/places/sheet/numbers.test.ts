// Numbers that were written down stay, and a blank field takes one back.

import { describe, expect, it } from 'vitest';
import type { ValueView } from '../../door/types';
import { emptyVehicle } from '../../parts/vehicle';
import { numbersForm, ownNumbers, valueLabel, withNumbers } from './numbers';

const values: ValueView[] = [
  { key: 'wheel-torque', unit: 'N·m', known: { is: 'own', text: '110', unit: 'N·m' } },
  { key: 'oil-grade', unit: null, known: { is: 'handbook' } },
];
const vehicle = { ...emptyVehicle(), values: { 'wheel-torque': '110', 'of a newer version': '7' } };

describe('the numbers of a car', () => {
  it('are those that the owner wrote down', () => {
    expect(ownNumbers(values)).toEqual([{ key: 'wheel-torque', unit: 'N·m', text: '110' }]);
    expect(values.map(valueLabel)).toEqual(['Torque of the wheels (N·m)', 'Oil grade']);
  });

  it('are taken into the vehicle, and back when a field is blank', () => {
    const form = { ...numbersForm({ form: vehicle }), 'oil-grade': '5W-30', 'wheel-torque': ' ' };
    expect(withNumbers(vehicle, form).values).toEqual({ 'oil-grade': '5W-30', 'of a newer version': '7' });
    expect(vehicle.values['wheel-torque']).toBe('110');
  });
});
