// How a trouble ends: the causes that are offered, and what mends them.

import type { ItemForm, ItemView, SuspectView } from '../../../door/types';
import { say } from '../../../words';
import { causeName } from './words';

/** The value of the choice that nobody found out, or that it is none of the table. */
export const UNKNOWN_CAUSE = '?';

/** So many of the likeliest are offered as keys, once something was found. */
const OFFERED = 3;
/** Below this chance, in thousandths, a cause is offered only as the likeliest. */
const LEAST_OFFERED = 50;

/** What was the cause, and what was done about it. */
export interface Ending {
  /** The key of the cause; empty where it is none of the table. */
  cause: string;
  /** A visit is to be written for it. */
  visit: boolean;
  items: ItemForm[];
  by: 'owner' | 'workshop';
}

/** The likeliest causes, by key. */
export function endOffers(suspects: SuspectView[]): string[] {
  return suspects.slice(0, OFFERED).filter(({ chance }, place) => place === 0 || chance >= LEAST_OFFERED).map(({ cause }) => cause);
}

/** Every cause by name behind a choice that chooses nothing, and one for what nobody found out. */
export function causeOptions(suspects: SuspectView[]): { value: string; label: string }[] {
  const named = suspects.map(({ cause }) => ({ value: cause, label: causeName(cause) })).sort((a, b) => a.label.localeCompare(b.label));
  return [{ value: '', label: say('trouble-cause-choose') }, { value: UNKNOWN_CAUSE, label: say('cause-unknown') }, ...named];
}

/** The items that mend a cause, where items do. */
export function mendItems(suspect: SuspectView | undefined): ItemView[] {
  return suspect?.mend.by === 'items' ? suspect.mend.items : [];
}
