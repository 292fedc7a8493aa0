// Where the focus goes when what had it is drawn anew, so that nobody is thrown back to the top of the page.

import { tick } from 'svelte';
import type { ItemView } from './door/types';
import { itemAddress } from './parts/visit/lib';

/** By this name an element in a list is found again, wherever in the list it now stands: `data-place`. */
export function placeOf(item: ItemView): string {
  return itemAddress(item);
}

/** Takes the focus back to an item, or else to the first of these headings that there is. */
export async function focusOn(item: ItemView, ...headings: string[]): Promise<void> {
  await tick();
  const target = document.querySelector<HTMLElement>(`[data-place="${CSS.escape(placeOf(item))}"]`) ?? firstOf(headings);
  if (!target) return;
  for (let fold = target.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null) fold.open = true;
  if (target.tabIndex < 0) target.tabIndex = -1;
  target.focus();
}

/** Takes the focus to a button that is drawn again once its form has closed. */
export async function focusBack(opener: () => HTMLElement | undefined): Promise<void> {
  await tick();
  opener()?.focus();
}

function firstOf(ids: string[]): HTMLElement | null {
  return ids.map((id) => document.getElementById(id)).find((element) => element !== null) ?? null;
}
