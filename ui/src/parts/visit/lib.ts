// What stands in a visit form: how it starts, how an earlier visit is taken back into one, what goes to the door.

import type { BookLine, ItemForm, ItemView, PartForm, PartView, VisitForm } from '../../door/types';

export const MEASURES = ['piece', 'litre', 'set', 'kilogram', 'metre'] as const;

export function emptyVisit(currency: string, day = ''): VisitForm {
  return { day, reading: '', workshop: '', items: [], parts: [], cost: '', currency, note: '', papers: [] };
}

export function emptyPart(): PartForm {
  return { name: '', maker: '', number: '', quantity: '', measure: 'piece', price: '' };
}

export function itemForm(item: ItemView): ItemForm {
  return item.of === 'own' ? { own: item.name } : { catalogue: item.number };
}

export function sameItem(a: ItemForm, b: ItemForm): boolean {
  if ('own' in a) return 'own' in b && a.own === b.own;
  return 'catalogue' in b && a.catalogue === b.catalogue;
}

/** The items with this one added, or without it when it was among them. */
export function toggled(items: ItemForm[], item: ItemForm): ItemForm[] {
  const without = items.filter((other) => !sameItem(other, item));
  return without.length < items.length ? without : [...items, item];
}

/** A part as a form takes it; the price is left out, because it may have changed since. */
export function partAgain({ name, maker, number, quantity, measure }: PartView): PartForm {
  return { name, maker, number, quantity, measure, price: '' };
}

/** An earlier visit as a form takes it back; nothing when the line is no visit. */
export function visitOf({ day, reading, says }: BookLine): VisitForm | undefined {
  if (says.kind !== 'visit') return undefined;
  const currency = says.cost?.currency ?? says.parts.find(({ price }) => price)?.price?.currency ?? '';
  return {
    day,
    reading: reading === null ? '' : String(reading.count),
    workshop: says.workshop,
    items: says.items.map(itemForm),
    parts: says.parts.map((part) => ({ ...partAgain(part), price: part.price?.number ?? '' })),
    cost: says.cost?.number ?? '',
    currency,
    note: says.note,
    papers: says.papers.map(({ subject }) => subject),
  };
}

/** The visit without part rows in which nothing was written. */
export function cleaned(visit: VisitForm): VisitForm {
  const written = ({ name, maker, number, price }: PartForm) => [name, maker, number, price].some((text) => text.trim() !== '');
  return { ...visit, parts: visit.parts.filter(written) };
}
