// What a paper says, as its owner took it over: the start of a visit, a fill or a purchase. The Counter hands it to
// the place where the line is written, which is opened at an address that names the paper.

import type { PartForm } from '../door/types';

/** Every value is text as a form takes it, empty where the paper does not tell. */
export interface FromPaper {
  /** The paper's line. */
  paper: string;
  day: string;
  shop: string;
  cost: string;
  currency: string;
  parts: PartForm[];
  note: string;
  volume: string;
  volumeUnit: string;
  /** Of one litre or gallon. */
  price: string;
  /** What the instrument showed, in the unit of this car. */
  reading: string;
}

const ADDRESS = 'paper ';
/** By this name the Counter is told of the line that another place wrote for it. */
export const WRITTEN_FOR_COUNTER = 'written for the counter';

/** A paper of which nothing was read. */
export function nothingRead(paper: string): FromPaper {
  return { paper, day: '', shop: '', cost: '', currency: '', parts: [], note: '', volume: '', volumeUnit: '', price: '', reading: '' };
}

/** The part of an address that opens a form for a paper, and back; nothing when it names no paper. */
export function paperAddress(paper: string): string {
  return ADDRESS + paper;
}

export function paperAt(address: string): string | undefined {
  return address.startsWith(ADDRESS) ? address.slice(ADDRESS.length) : undefined;
}
