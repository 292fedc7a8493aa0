// Trouble codes in words: what each sign of a code stands for, the lists kept apart, and what the car's own tests say.

import type { CodeLife, CodesView, CodeView, NoteView, ReadinessView, SeenAt, ToldView } from '../../../door/types';
import { day, measuredValue, reading } from '../../../format';
import { list, say, sayKey } from '../../../words';

/** The lists of a car, the surest first. */
const STATUSES = ['confirmed', 'permanent', 'pending', 'unstated'] as const;

/** Codes of one list. */
export interface CodeGroup {
  status: string;
  codes: CodeView[];
}

/** The codes kept apart by how sure the car is; a status that only a newer version knows closes the list. */
export function codeGroups(codes: CodeView[]): CodeGroup[] {
  const known: readonly string[] = STATUSES;
  const others = codes.map(({ status }) => status).filter((status) => !known.includes(status));
  const groups = [...STATUSES, ...new Set(others)].map((status) => ({ status, codes: codes.filter((code) => code.status === status) }));
  return groups.filter((group) => group.codes.length > 0);
}

/** The lists that the car answered with and that are empty. */
export function emptyLists({ answered, codes }: Pick<CodesView, 'answered' | 'codes'>): string[] {
  return answered.filter((status) => !codes.some((code) => code.status === status));
}

/** What the sentence of a code says; an honest word where there is none here. */
export function meaningText({ meaning }: CodeView): string {
  return (meaning === null ? undefined : sayKey(meaning)) ?? say('codes-no-text');
}

/** A sign of the code and what it stands for. */
export interface CodePart {
  sign: string;
  stands: string;
}

/** The code taken apart: its letter, its second sign, its third where that hints at something, and the rest. */
export function codeParts({ code, system, origin, area }: CodeView): CodePart[] {
  const hint = area === null ? undefined : sayKey(`code-area-${area}`);
  const third = hint === undefined ? [] : [{ sign: code.slice(2, 3), stands: say('codes-hint', { area: hint }) }];
  return [
    { sign: code.slice(0, 1), stands: sayKey(`code-system-${system}`) ?? system },
    { sign: code.slice(1, 2), stands: sayKey(`code-origin-${origin}`) ?? origin },
    ...third,
    { sign: code.slice(hint === undefined ? 2 : 3), stands: say('codes-fault-number') },
  ];
}

/** The code as it is printed, with the failure type that some tools put behind it. */
export function codeText({ code, failure_type }: Pick<CodeView, 'code' | 'failure_type'>): string {
  return failure_type === null ? code : `${code}-${failure_type}`;
}

export function statusName(status: string): string {
  return sayKey(`code-status-${status}`) ?? status;
}

export function noteText({ key, values }: NoteView): string {
  return sayKey(`code-note-${key}`, values) ?? say('codes-note-unknown');
}

/** `Engine speed: 812 rpm`. */
export function toldText({ key, value, unit }: ToldView): string {
  return say('value-is', { what: sayKey(`code-value-${key}`) ?? key, value: measuredValue(value, unit) });
}

/** The tests of a car by name, finished and not. */
export function tests({ monitors }: ReadinessView): { finished: string[]; open: string[] } {
  const named = (done: boolean) => monitors.filter(({ finished }) => finished === done).map(({ key }) => sayKey(`code-monitor-${key}`) ?? key);
  return { finished: named(true), open: named(false) };
}

/** What the car's own tests say, and what an inspection lets pass where the door knows. */
export function readinessText(view: ReadinessView): string {
  const { open } = tests(view);
  if (open.length === 0) return say('codes-ready');
  const unfinished = say('codes-not-ready', { count: open.length, tests: list(open) });
  const allowed = view.allowed === null ? undefined : sayKey('code-tests-allowed', { count: view.allowed });
  return allowed === undefined ? unfinished : `${unfinished} ${allowed}`;
}

/** Whether clearing costs more than the report, or has done so: codes are there, or were cleared. */
export function warnsOfClearing({ codes, notes }: Pick<CodesView, 'codes' | 'notes'>, cleared: boolean): boolean {
  return cleared || codes.length > 0 || notes.some(({ key }) => key === 'cleared');
}

/** The life of a code, sentence by sentence: first seen, how often, each time that it came back, how it stands. */
export function lifeTexts({ first, last, times, returns, standing, since, warnings }: CodeLife): string[] {
  const came = returns.map(({ left, was_cleared, back, after }) =>
    say('codes-back', {
      cleared: was_cleared ? 'yes' : 'no',
      left: seenText(left),
      back: seenText(back),
      distance: after.distance === null ? 'unknown' : reading(after.distance),
    }),
  );
  const stands = sayKey(`code-standing-${standing}`) ?? standing;
  return [
    times === 1 ? say('codes-seen-once', { first: seenText(first) }) : say('codes-seen', { first: seenText(first), last: seenText(last), times }),
    ...came,
    since === null ? stands : say('codes-standing', { standing: stands, since: seenText(since) }),
    ...warnings.map((key) => sayKey(`code-warning-${key}`) ?? key),
  ];
}

/** `1 Jun 2026 at 98 420 km`. */
export function seenText({ day: on, reading: read }: SeenAt): string {
  return read === null ? day(on) : say('seen-at', { day: day(on), reading: reading(read) });
}
