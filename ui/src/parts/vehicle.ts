// What a vehicle form starts with, and the order of its questions.

import type { DrivenForm, VehicleForm } from '../door/types';

export const DRIVEN = ['short_trips', 'towing', 'dust', 'standing'] as const satisfies (keyof DrivenForm)[];

/** The name of a question in the words and in the answers of the core: `short-trips`. */
export function drivenKey<K extends (typeof DRIVEN)[number]>(key: K): K extends 'short_trips' ? 'short-trips' : K {
  return key.replace('_', '-') as K extends 'short_trips' ? 'short-trips' : K;
}

export function emptyVehicle(): VehicleForm {
  return {
    name: '',
    make_model: '',
    vin: '',
    engine: 'petrol',
    unit: 'km',
    first_use: '',
    bought_new: false,
    yearly: '',
    driven: { short_trips: false, towing: false, dust: false, standing: false },
    fitted: {},
    values: {},
    reading: '',
  };
}
