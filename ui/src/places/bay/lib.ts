// The bay: which cautions come before the chosen jobs, and what the visit form starts with.

import type { BayView, CautionView, ItemForm, JobView, PartForm, PartView, VisitForm } from '../../door/types';
import type { TroubleEnd, WorkDone } from '../../parts/bay';
import type { FromPaper } from '../../parts/from-paper';
import { cleaned, eachOnce, emptyVisit, itemForm, partAgain, readingOn, sameItem } from '../../parts/visit/lib';

/** Where a person is in the bay: choosing, reading the cautions, writing the visit. */
export type Step = 'choose' | 'cautions' | 'visit';

/** A visit on its way, kept on the device until it stands in the book. */
export interface BayDraft {
  step: Step;
  /** `owner` or `workshop`: whoever does the work. */
  by: string;
  visit: VisitForm;
  /** The digits that stood in the reading from the start. */
  leading?: string;
  /** It lies in the past, and its day is what is asked for. */
  past?: boolean;
  /** It is told by a paper, and what was done is ticked in the form. */
  paper?: boolean;
  /** On what a guide looked, so that something may have been found there. */
  looked?: ItemForm[];
  /** The trouble that ends with it. */
  ends?: TroubleEnd;
}

/** A visit of today, whose reading begins with digits that will not have changed since the last one. */
export function freshDraft({ currency, today, leading }: BayView): BayDraft {
  return { step: 'choose', by: 'owner', visit: { ...emptyVisit(currency, today), reading: leading }, leading };
}

/** A draft that was kept on the device; leading digits are those of its own day and no other. */
export function resumed(draft: BayDraft, { today }: BayView): BayDraft {
  const { visit, leading = '' } = draft;
  return { ...draft, visit: { ...visit, reading: readingOn(visit.day, today, visit.reading, leading) } };
}

/** Straight to the form of a job that was done at some time before the book begins. */
export function pastDraft({ currency }: BayView, item: ItemForm): BayDraft {
  return { step: 'visit', by: 'owner', visit: { ...emptyVisit(currency), items: [item] }, past: true };
}

/** Straight to the form of a visit that a paper tells of; what was done is yet to be ticked. */
export function paperDraft({ currency }: BayView, from: FromPaper): BayDraft {
  const { day, shop, cost, parts, note, reading } = from;
  const told = { day, workshop: shop, cost, parts, note, reading, papers: [from.paper] };
  const visit = { ...emptyVisit(from.currency || currency), ...told };
  return { step: 'visit', by: shop === '' ? 'owner' : 'workshop', visit, paper: true };
}

/** A draft to which work that is done was added: straight to the form, since cautions come before work. */
export function withWork(draft: BayDraft, work: WorkDone): BayDraft {
  const items = eachOnce([...draft.visit.items, ...work.items]);
  const looked = eachOnce([...(draft.looked ?? []), ...work.looked]);
  const known = (part: PartForm) => draft.visit.parts.some((other) => other.maker === part.maker && other.number === part.number && other.name === part.name);
  const parts = [...draft.visit.parts, ...work.parts.filter((part) => !known(part))];
  const ends = work.ends ?? draft.ends;
  return { ...draft, step: 'visit', by: work.by, visit: { ...draft.visit, items, parts }, looked, ...(ends && { ends }) };
}

/** A draft to which a part from home was added, and the job that it serves. */
export function withFitted(draft: BayDraft, part: PartView): BayDraft {
  const { items, parts } = draft.visit;
  const served = part.served && itemForm(part.served);
  const all = served && !items.some((item) => sameItem(item, served)) ? [...items, served] : items;
  return { ...draft, step: 'choose', visit: { ...draft.visit, items: all, parts: [...parts, partAgain(part)] } };
}

/** The jobs as the bay lays them out. */
export interface JobGroups {
  /** Those of the next visit. */
  next: JobView[];
  /** What presses besides, and what is chosen. */
  near: JobView[];
  further: JobView[];
}

/** Besides a next visit, so many stand in sight; where none is planned, all do. */
const IN_SIGHT = 12;

export function groupJobs(jobs: JobView[], items: ItemForm[]): JobGroups {
  const chosen = chosenJobs(jobs, items);
  const next = jobs.filter((job) => job.in_next_visit);
  const others = jobs.filter((job) => !job.in_next_visit);
  const near = others.filter((job, index) => next.length === 0 || index < IN_SIGHT || chosen.includes(job));
  return { next, near, further: others.filter((job) => !near.includes(job)) };
}

export function chosenJobs(jobs: JobView[], items: ItemForm[]): JobView[] {
  return jobs.filter((job) => items.some((item) => sameItem(item, itemForm(job.item))));
}

/** The cautions of all chosen jobs, each once, the gravest first; `handbook` always closes the list. */
export function cautionsFor(known: CautionView[], jobs: JobView[]): CautionView[] {
  const keys = new Set(jobs.flatMap((job) => (job.workshop ? [...job.cautions, 'workshop'] : job.cautions)));
  return known.filter(({ key }) => keys.has(key) || key === 'handbook');
}

/** The step behind 'choose': a workshop has read its own cautions. */
export function stepAfterChoosing(by: string): Step {
  return by === 'workshop' ? 'visit' : 'cautions';
}

/** The parts fitted the last time as a start, unless rows are already there. */
export function offeredParts(parts: PartForm[], jobs: JobView[]): PartForm[] {
  return parts.length > 0 ? parts : jobs.flatMap((job) => job.parts.map(partAgain));
}

/**
 * What goes to the door: who did it is said by the workshop's name alone, and leading digits to which nobody added any
 * are no reading.
 */
export function visitToRecord({ by, visit, leading = '' }: BayDraft): VisitForm {
  const read = visit.reading === leading ? { ...visit, reading: '' } : visit;
  return cleaned(by === 'workshop' ? read : { ...read, workshop: '' });
}
