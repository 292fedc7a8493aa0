// A trouble on its way: how it starts, what the door is asked about it, and what is written into the book.

import type { AnswerKey, HereForm, ScanForm, ToolLine, TroubleForm } from '../../../door/types';

/** Nothing was said of tools or of the dark. */
export const NOTHING_HERE: HereForm = { at_night: false, owned: [], lacking: [] };

/** By this name the device keeps a trouble that is on its way. */
export function troubleKey(book: string, subject: string): string {
  return subject === '' ? `trouble.${book}` : `trouble.${book}.${subject}`;
}

export function emptyTrouble(): TroubleForm {
  return { day: '', reading: '', words: '', when: '', symptoms: [], absent: [], scans: [emptyScan()], answers: [], asked: '' };
}

export function emptyScan(day = ''): ScanForm {
  return { day, reading: '', text: '', cleared: false };
}

/** Whether anything was told that is worth keeping. */
export function isTold({ words, symptoms, scans }: TroubleForm): boolean {
  return words.trim() !== '' || symptoms.length > 0 || scans.some(isScan);
}

/** What the door is asked while it is typed: the owner's own words change no answer, and are not sent at every key. */
export function asAsked(form: TroubleForm): TroubleForm {
  return { ...form, words: '', when: '', asked: '' };
}

/**
 * What is written into the book: a day that nobody gave is the one on which it was typed, and not the one on which it is
 * read again; a scan in which nothing stands is none.
 */
export function asWritten(form: TroubleForm, today: string): TroubleForm {
  const dated = (day: string) => (day === '' ? today : day);
  const scans = form.scans.filter(isScan).map((scan) => ({ ...scan, day: dated(scan.day) }));
  return { ...form, day: dated(form.day), scans };
}

/** A trouble of the book as the fields take it: with room for a scan. */
export function fromBook(form: TroubleForm): TroubleForm {
  return form.scans.length > 0 ? form : { ...form, scans: [emptyScan()] };
}

/** With an answer to a check; it stands behind the earlier ones, since a check may be made twice. */
export function withAnswer(form: TroubleForm, check: string, answer: AnswerKey): TroubleForm {
  return { ...form, answers: [...form.answers, { check, answer }] };
}

/** Without the answer in this place. */
export function withoutAnswer(form: TroubleForm, place: number): TroubleForm {
  return { ...form, answers: form.answers.filter((_, index) => index !== place) };
}

/** A symptom that shows, or no longer; what shows is not absent. */
export function withSymptom(form: TroubleForm, key: string, where: 'symptoms' | 'absent'): TroubleForm {
  const other = where === 'symptoms' ? 'absent' : 'symptoms';
  const without = (keys: string[]) => keys.filter((one) => one !== key);
  const there = form[where].includes(key);
  return { ...form, [where]: there ? without(form[where]) : [...form[where], key], [other]: without(form[other]) };
}

/** The check that found something, where the last answer did so. */
export function foundLast({ answers }: TroubleForm): string | undefined {
  const last = answers.at(-1);
  return last?.answer === 'found' ? last.check : undefined;
}

/** Whether the owner has a tool, as far as he said. */
export function hasTool({ key, usual }: ToolLine, { owned, lacking }: HereForm): boolean {
  return usual ? !lacking.includes(key) : owned.includes(key);
}

/** What he has to work with once he has said whether he has this tool. */
export function withTool(here: HereForm, { key, usual }: ToolLine, has: boolean): HereForm {
  const [field, said] = usual ? (['lacking', !has] as const) : (['owned', has] as const);
  const others = here[field].filter((one) => one !== key);
  return { ...here, [field]: said ? [...others, key] : others };
}

/** What was kept on the device, where it has the shape of what is asked. */
export function keptHere(kept: unknown): HereForm {
  const { owned, lacking } = (typeof kept === 'object' && kept !== null ? kept : {}) as Partial<Record<keyof HereForm, unknown>>;
  const keys = (value: unknown) => (Array.isArray(value) ? value.filter((key): key is string => typeof key === 'string') : []);
  return { at_night: false, owned: keys(owned), lacking: keys(lacking) };
}

function isScan({ text, cleared }: ScanForm): boolean {
  return text.trim() !== '' || cleared;
}
