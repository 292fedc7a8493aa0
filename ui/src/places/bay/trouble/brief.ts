// The brief for the workshop as headed lines: facts alone, in the order in which a workshop asks for them.

import type { AnswerForm, BriefFrame, BriefPage, BriefPart, BriefView, CodeView, WorkLine } from '../../../door/types';
import { datedReading, day, itemNames, reading } from '../../../format';
import { symptomName } from '../../../parts/trouble';
import { list, say, sayKey } from '../../../words';
import { fittingName } from '../../sheet/lib';
import { codeText, meaningText, readinessText, seenText, statusName, toldText } from './codes';
import { checkName } from './words';

/** The brief as it is set on paper. */
export function briefPage(parts: BriefPart[]): BriefPage {
  return { title: say('brief-title'), parts, foot: say('brief-no-diagnosis') };
}

/** Its headings, each with its lines; one without lines is left out. */
export function briefParts(view: BriefView): BriefPart[] {
  const parts = [
    { title: say('brief-car'), lines: carLines(view) },
    { title: say('brief-complaint'), lines: complaintLines(view) },
    { title: say('brief-codes'), lines: codeLines(view) },
    { title: say('brief-checked'), lines: view.checked.map(checkedLine) },
    { title: say('brief-work'), lines: view.work.map(workLine) },
    { title: say('brief-asked'), lines: [view.asked.trim() || say('brief-asked-usual')] },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
}

/** The brief as plain text: without spaces at which no line breaks, since where it is pasted they are searched for in vain. */
export function briefText(parts: BriefPart[]): string {
  const blocks = parts.map(({ title, lines }) => [title.toLocaleUpperCase(), ...lines].join('\n'));
  return [say('brief-title'), ...blocks, say('brief-no-diagnosis')].join('\n\n').replaceAll('\u00a0', ' ');
}

function carLines({ vehicle, vin, first_use, fitted, reading: read, day: noticed }: BriefView): string[] {
  const engine = sayKey(`engine-${vehicle.engine}`) ?? vehicle.engine;
  const said = (what: string, value: string) => say('value-is', { what, value });
  return [
    said(say('vehicle-make-model'), vehicle.make_model || vehicle.name),
    said(say('vehicle-engine'), engine),
    ...(fitted.length === 0 ? [] : [said(say('fitted-has'), list(fitted.map(fittingName)))]),
    ...(first_use === null ? [] : [said(say('vehicle-first-use'), day(first_use))]),
    ...(vin === null ? [] : [said(say('vehicle-vin'), vin)]),
    ...(read === null ? [] : [said(say('fact-reading'), datedReading(read))]),
    said(say('brief-noticed'), day(noticed)),
  ];
}

function complaintLines({ words, when, symptoms, absent }: BriefView): string[] {
  const told = (text: string) => (text.trim() === '' ? [] : [text.trim()]);
  return [
    ...told(words),
    ...(when.trim() === '' ? [] : [say('brief-when', { when: when.trim() })]),
    ...(symptoms.length === 0 ? [] : [say('brief-shows', { symptoms: list(symptoms.map(symptomName)) })]),
    ...(absent.length === 0 ? [] : [say('brief-absent', { symptoms: list(absent.map(symptomName)) })]),
  ];
}

function codeLines({ codes, frames, readiness, cleared }: BriefView): string[] {
  return [
    ...codes.map(codeLine),
    ...frames.map(frameLine),
    ...(readiness === null ? [] : readiness.units.map((unit) => say('brief-at', { seen: seenText(readiness.seen), what: `${say('codes-readiness')}. ${readinessText(unit)}` }))),
    ...(cleared === null ? [] : [say('brief-cleared', { day: day(cleared) })]),
  ];
}

/** A code with when it was last read in the car, and how often it had come back by then. */
function codeLine(code: CodeView): string {
  const said = say('brief-code', { code: codeText(code), status: statusName(code.status), meaning: meaningText(code) });
  if (code.life === null) return said;
  const { last, returns } = code.life;
  return say('brief-code-seen', { said, seen: seenText(last), back: returns.length });
}

function frameLine({ seen, frame: { code, values } }: BriefFrame): string {
  const told = values.map(toldText).join('; ');
  const what = code === null ? say('codes-frame', { values: told }) : say('codes-frame-of', { code, values: told });
  return say('brief-at', { seen: seenText(seen), what });
}

function checkedLine({ check, answer }: AnswerForm): string {
  return say('value-is', { what: checkName(check), value: say(`answer-${answer}-word`) });
}

function workLine({ day: on, reading: read, workshop, items }: WorkLine): string {
  const told = { day: day(on), items: itemNames(items), by: workshop || say('by-owner-word') };
  return read === null ? say('brief-work-line', told) : say('brief-work-line-at', { ...told, reading: reading(read) });
}
