// What an item in a form is called: the form holds the number, the shelf knows the catalogue.

import type { ItemForm } from '../../door/types';
import { itemName } from '../../format';
import { shelf } from '../../shelf.svelte';

export function formItemName(item: ItemForm): string {
  if ('own' in item) return item.own;
  const line = shelf.view?.catalogue.find(({ number }) => number === item.catalogue);
  return itemName({ of: 'catalogue', number: item.catalogue, key: line?.key ?? '' });
}
