// Lets a field deep in a form know what was refused, so that it can mark itself.

import { getContext, setContext } from 'svelte';
import type { Refusal } from '../door/types';

type Reading = () => Refusal | undefined;

const KEY = Symbol('refusal');

/** Called by a form: its fields will look at this refusal. */
export function tellFields(refusal: Reading): void {
  setContext<Reading>(KEY, refusal);
}

/** Called by a field: whether the refusal means the field at this path. A field outside any form is never meant. */
export function meansField(path: () => string): () => boolean {
  const refusal = getContext<Reading | undefined>(KEY);
  return () => refusal?.()?.field === path();
}
