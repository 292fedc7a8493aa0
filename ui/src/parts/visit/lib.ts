// What stands in a visit form: how it starts, how an earlier visit is taken back into one, what goes to the door.

import type { BookLine, CatalogueLine, FoundForm, ItemForm, ItemView, PartForm, PartView, VisitForm } from '../../door/types';

export const MEASURES = ['piece', 'litre', 'set', 'kilogram', 'metre'] as const;

export function emptyVisit(currency: string, day = ''): VisitForm {
  return { day, reading: '', workshop: '', items: [], found: [], parts: [], cost: '', currency, note: '', papers: [] };
}

/** The reading when the visit moves to another day: digits that nobody typed stand there only today. */
export function readingOn(day: string, today: string, reading: string, leading: string): string {
  if (day === today) return reading === '' ? leading : reading;
  return reading === leading ? '' : reading;
}

export function emptyPart(): PartForm {
  return { name: '', maker: '', number: '', quantity: '', measure: 'piece', price: '', kind: '' };
}

export function itemForm(item: ItemView): ItemForm {
  return item.of === 'own' ? { own: item.name } : { catalogue: item.number };
}

export function sameItem(a: ItemForm, b: ItemForm): boolean {
  if ('own' in a) return 'own' in b && a.own === b.own;
  return 'catalogue' in b && a.catalogue === b.catalogue;
}

/** Whether two answers of the core mean one item. */
export function sameView(a: ItemView, b: ItemView): boolean {
  return sameItem(itemForm(a), itemForm(b));
}

/** The item as the part of an address, and back. */
export function itemAddress(item: ItemView): string {
  return item.of === 'own' ? `own ${item.name}` : String(item.number);
}

export function itemAt(address: string): ItemForm | undefined {
  if (address.startsWith('own ')) return { own: address.slice(4) };
  return /^\d+$/.test(address) ? { catalogue: Number(address) } : undefined;
}

/** The items with this one added, or without it when it was among them. */
export function toggled(items: ItemForm[], item: ItemForm): ItemForm[] {
  const without = items.filter((other) => !sameItem(other, item));
  return without.length < items.length ? without : [...items, item];
}

/** A part as a form takes it; the price is left out, because it may have changed since. */
export function partAgain({ name, maker, number, quantity, measure, served, kind }: PartView): PartForm {
  const part = { name, maker, number, quantity, measure, price: '', kind };
  return served === null ? part : { ...part, item: itemForm(served) };
}

/** A part as a form takes it back, its price among the rest. */
export function partForm(part: PartView): PartForm {
  return { ...partAgain(part), price: part.price?.number ?? '' };
}

/** The item that a part serves: the one it names, or the only one of the visit. */
export function servedBy(part: PartForm, items: ItemForm[]): ItemForm | undefined {
  return part.item ?? (items.length === 1 ? items[0] : undefined);
}

/** What the catalogue tells of an item; nothing of an item of the owner's own. */
export function inCatalogue(item: ItemForm | undefined, catalogue: CatalogueLine[]): CatalogueLine | undefined {
  if (item === undefined || 'own' in item) return undefined;
  return catalogue.find(({ number }) => number === item.catalogue);
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
    found: says.found.map(({ item, finding, value }) => ({ item: itemForm(item), finding: asWritten(finding), value: value?.value ?? '' })),
    parts: says.parts.map(partForm),
    cost: says.cost?.number ?? '',
    currency,
    note: says.note,
    papers: says.papers.map(({ subject }) => subject),
  };
}

/** Where a look measures on what another item renews: the look, and what it measures on. By the keys of the catalogue. */
const MEASURED_ON: Readonly<Record<string, readonly string[]>> = {
  'tyre-check': ['tyres'],
  'brake-check': ['brake-pads-front', 'brake-pads-rear'],
  'brake-fluid-test': ['brake-fluid'],
  'battery-test': ['battery'],
  'coolant-test': ['coolant'],
};

/**
 * What a visit for these items may have found something on, each once, besides what was found already. A look
 * measures on what the plan has, and on nothing that the plan leaves out because this car lacks it.
 */
export function lookedAt(items: ItemForm[], found: FoundForm[], planned: ItemForm[], catalogue: CatalogueLine[]): ItemForm[] {
  const looked = items.flatMap((item) => {
    const line = inCatalogue(item, catalogue);
    const measured = (line && MEASURED_ON[line.key]) ?? [];
    const others = catalogue.filter(({ key, number }) => measured.includes(key) && isAmong({ catalogue: number }, planned)).map(formOf);
    return line && line.findings.length > 0 ? [item, ...others] : others;
  });
  return eachOnce([...looked, ...found.map(({ item }) => item)]);
}

/** On what else something may have been found: what the plan has besides these rows, as far as findings are known. */
export function offered(planned: ItemForm[], rows: ItemForm[], catalogue: CatalogueLine[]): CatalogueLine[] {
  const known = catalogue.filter(({ findings }) => findings.length > 0);
  return known.filter((line) => isAmong(formOf(line), planned) && !isAmong(formOf(line), rows));
}

/** The items without those that stand there already. */
export function eachOnce(items: ItemForm[]): ItemForm[] {
  return items.reduce<ItemForm[]>((each, item) => (isAmong(item, each) ? each : [...each, item]), []);
}

function isAmong(item: ItemForm, items: ItemForm[]): boolean {
  return items.some((other) => sameItem(other, item));
}

function formOf({ number }: CatalogueLine): ItemForm {
  return { catalogue: number };
}

/** What was found with this on the item in place of what stood there; an empty finding takes it out. */
export function withFound(found: FoundForm[], one: FoundForm): FoundForm[] {
  const others = found.filter(({ item }) => !sameItem(item, one.item));
  return one.finding === '' ? others : [...others, one];
}

/** The visit without part rows in which nothing was written. */
export function cleaned(visit: VisitForm): VisitForm {
  return { ...visit, parts: visit.parts.filter(isWritten) };
}

/** Whether anything was written in the row of a part. */
export function isWritten({ name, maker, number, price }: PartForm): boolean {
  return [name, maker, number, price].some((text) => text.trim() !== '');
}

/** The finding as it was written: `at-limit` is what the door makes of a good word beside a value that is not. */
function asWritten(finding: string): string {
  return finding === 'at-limit' ? 'within-limits' : finding;
}
