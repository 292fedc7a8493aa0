// Something bought: how the form starts, and what goes to the door.

import type { BookLine, BoughtForm, CounterView } from '../../../door/types';
import type { FromPaper } from '../../../parts/from-paper';
import { isWritten, partForm } from '../../../parts/visit/lib';

/** The currency of the newest line that has a cost; empty where there is none. */
export function lastCurrency({ lines }: Pick<CounterView, 'lines'>): string {
  return lines.find(({ cost }) => cost !== null)?.cost?.currency ?? '';
}

/** The shops and workshops named before, each once. */
export function shopsOf({ lines, stock }: Pick<CounterView, 'lines' | 'stock'>): string[] {
  const named = [...stock.map(({ shop }) => shop), ...lines.map(({ place }) => place)];
  return [...new Set(named)].filter(Boolean);
}

export function emptyBought(view: Pick<CounterView, 'lines'>, today: string): BoughtForm {
  return { day: today, shop: '', parts: [], cost: '', currency: lastCurrency(view), note: '', papers: [] };
}

/** A purchase as its receipt tells it. */
export function boughtFrom({ paper, day, shop, parts, cost, currency, note }: FromPaper, view: Pick<CounterView, 'lines'>): BoughtForm {
  return { day, shop, parts: parts.map((part) => ({ ...part })), cost, currency: currency || lastCurrency(view), note, papers: [paper] };
}

/** The purchase without part rows in which nothing was written. */
export function boughtToWrite(bought: BoughtForm): BoughtForm {
  return { ...bought, parts: bought.parts.filter(isWritten) };
}

/** An earlier purchase as a form takes it back; nothing when the line is none. */
export function boughtOf({ day, says }: BookLine): BoughtForm | undefined {
  if (says.kind !== 'bought') return undefined;
  const { shop, parts, cost, note, papers } = says;
  const currency = cost?.currency ?? parts.find(({ price }) => price)?.price?.currency ?? '';
  return { day, shop, parts: parts.map(partForm), cost: cost?.number ?? '', currency, note, papers: papers.map(({ subject }) => subject) };
}

const AMEND = 'amend ';

/** The address at which the Counter puts a purchase right. */
export function amendAddress(line: string): string {
  return AMEND + line;
}

/** The line of the purchase that is put right at an address; nothing at any other. */
export function amendedAt(address: string): string | undefined {
  return address.startsWith(AMEND) ? address.slice(AMEND.length) : undefined;
}
