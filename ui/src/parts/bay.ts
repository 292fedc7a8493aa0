// The ways into the Bay, as the part of an address: a trouble, its brief, a guide, or the jobs. And what a guide or a
// trouble hands to the visit form there.

import type { ItemForm, PartForm } from '../door/types';
import { sayKey } from '../words';

export type BayWay =
  | { to: 'trouble'; subject: string }
  | { to: 'brief'; subject: string }
  | { to: 'guide'; key: string }
  | { to: 'work'; past: string };

/** By this name the Bay takes work that is done. */
export const WORK_FOR_BAY = 'work for the bay';

/** Work that is done and waits to be written down. */
export interface WorkDone {
  items: ItemForm[];
  /** On what something may have been found, besides. */
  looked: ItemForm[];
  parts: PartForm[];
  by: 'owner' | 'workshop';
  /** The trouble that ends with it. */
  ends?: TroubleEnd;
}

/** A trouble that ends with a visit. */
export interface TroubleEnd {
  /** Its line. */
  subject: string;
  /** The key of what was the cause; empty where it is none of the table. */
  cause: string;
}

/** The address of a trouble; without a line, of one that is not written down. */
export function troubleAddress(subject = ''): string {
  return subject === '' ? 'trouble' : `trouble ${subject}`;
}

export function briefAddress(subject: string): string {
  return `brief ${subject}`;
}

export function guideAddress(key: string): string {
  return `guide ${key}`;
}

/** What a guide is called. */
export function guideName(key: string): string {
  return sayKey(`guide-${key}`) ?? key;
}

/** Where an address leads; what names no trouble and no guide is the work. */
export function bayWay(open: string): BayWay {
  const [first = '', ...rest] = open.split(' ');
  const named = rest.join(' ');
  if (first === 'trouble') return { to: 'trouble', subject: named };
  if (first === 'brief' && named !== '') return { to: 'brief', subject: named };
  if (first === 'guide' && named !== '') return { to: 'guide', key: named };
  return { to: 'work', past: open };
}
