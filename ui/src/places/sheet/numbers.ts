// The numbers of a car: those that the owner wrote down, and the form that takes them.

import type { SheetView, ValueView, VehicleForm } from '../../door/types';
import { valueName } from '../../parts/values';
import { say } from '../../words';

/** A number that the owner wrote down. */
export interface OwnNumber {
  key: string;
  unit: string | null;
  text: string;
}

export function ownNumbers(values: ValueView[]): OwnNumber[] {
  return values.flatMap(({ key, known }) => (known.is === 'own' ? [{ key, unit: known.unit, text: known.text }] : []));
}

/** What the fields start with. */
export function numbersForm({ form }: Pick<SheetView, 'form'>): Record<string, string> {
  return { ...form.values };
}

/** The vehicle with these numbers; a blank one is taken back, and one that only a newer version asks for is kept. */
export function withNumbers(vehicle: VehicleForm, numbers: Record<string, string>): VehicleForm {
  const told = Object.entries({ ...vehicle.values, ...numbers }).filter(([, text]) => text.trim() !== '');
  return { ...vehicle, values: Object.fromEntries(told) };
}

/** A value with the unit in which it is usually given. */
export function valueLabel({ key, unit }: ValueView): string {
  return unit === null ? valueName(key) : say('numbers-unit', { what: valueName(key), unit });
}
