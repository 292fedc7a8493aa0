// What a trouble says in words: chances, reasons, symptoms under their headings.

import type { Because, CheckRow, StopView, SymptomLine } from '../../../door/types';
import { hasWords, itemName, workTime } from '../../../format';
import { symptomName } from '../../../parts/trouble';
import { list, say, sayKey } from '../../../words';

/** From so many minutes on, a time is told to ten minutes. */
const ROUGH_MINUTES = 60;
const LEAST_PERCENT = 5;
const MOST_PERCENT = 95;
/** A chance is told in steps of so many percent: the tables know no better. */
const STEP = 5;

export function causeName(key: string): string {
  return sayKey(`cause-${key}`) ?? key;
}

export function checkName(key: string): string {
  return sayKey(`check-${key}`) ?? key;
}

/** Symptoms under one heading. */
export interface SymptomGroup {
  about: string;
  symptoms: SymptomLine[];
}

/** The symptoms that have these words in their name, under their headings: lamps first, then as they came. */
export function symptomGroups(symptoms: SymptomLine[], find: string): SymptomGroup[] {
  const found = symptoms.filter(({ key }) => hasWords(symptomName(key), find));
  const headings = [...new Set(found.map(({ about }) => about))].sort((a, b) => Number(b === 'lamps') - Number(a === 'lamps'));
  return headings.map((about) => ({ about, symptoms: found.filter((one) => one.about === about) }));
}

/** `about 35 %`, `less than 5 %`, and never quite all; a chance comes in thousandths. */
export function chanceText(chance: number): string {
  const percent = Math.round(chance / 10 / STEP) * STEP;
  if (percent > MOST_PERCENT) return say('chance-large', { percent: MOST_PERCENT });
  return percent < LEAST_PERCENT ? say('chance-small', { percent: LEAST_PERCENT }) : say('chance', { percent });
}

/** How long a check takes: to the minute where that counts. */
export function checkTime(minutes: number): string {
  return minutes < ROUGH_MINUTES ? say('minutes', { minutes }) : workTime(minutes);
}

/** What has to be open, or nothing; what stands open already is not opened again. */
export function opensText({ opens }: Pick<CheckRow, 'opens'>): string {
  return list(opens.map(({ word, newly }) => (newly ? openingName(word) : say('check-open-already', { thing: openingName(word) }))));
}

/** The tools, with those that the owner lacks marked. */
export function toolsText({ tools }: Pick<CheckRow, 'tools'>): string {
  const name = (tool: string) => sayKey(`check-tool-${tool}`) ?? tool;
  return tools.map(({ tool, lacking }) => (lacking ? say('check-tool-lacking', { tool: name(tool) }) : name(tool))).join(' · ');
}

/** Why a check stands where it stands, in one sentence. */
export function reasonText(why: Because): string {
  switch (why.because) {
    case 'looks-for':
      return say('reason-looks-for', { cause: causeName(why.cause) });
    case 'symptom':
      return say('reason-symptom', { symptom: symptomName(why.symptom), cause: causeName(why.cause) });
    case 'code':
      return say('reason-code', { code: why.code, cause: causeName(why.cause) });
    case 'overdue':
      return say('reason-overdue', { item: itemName(why.item), cause: causeName(why.cause) });
    case 'touched':
      return say('reason-touched', { item: itemName(why.item), days: why.days, cause: causeName(why.cause) });
    case 'before':
      return say('reason-before', { cause: causeName(why.cause) });
    case 'shares':
      return say('reason-shares', { thing: openingName(why.word) });
    case 'second-look':
      return say('reason-second-look');
  }
}

/** What to do now, and what shows the danger. */
export function stopText({ danger, sign }: StopView): { shows: string; now: string } {
  const shows = sign.is === 'code' ? say('stop-code', { code: sign.code }) : symptomName(sign.symptom);
  return { shows, now: sayKey(`stop-${danger}`) ?? say('stop-unknown') };
}

function openingName(word: string): string {
  return sayKey(word) ?? word;
}
