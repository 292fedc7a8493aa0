// A trouble in a line.

import type { TroubleLine } from '../door/types';
import { list, sayKey } from '../words';

export function symptomName(key: string): string {
  return sayKey(`symptom-${key}`) ?? key;
}

/** A trouble in one breath: the owner's words, or what was ticked, or the codes. */
export function troubleText({ words, symptoms, codes }: TroubleLine): string {
  const [first = ''] = words.trim().split('\n');
  if (first !== '') return first;
  return symptoms.length > 0 ? list(symptoms.map(symptomName)) : list(codes);
}
