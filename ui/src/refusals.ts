// Refusals in one sentence: days, distances and amounts in it stand as everywhere else on the page.

import { NO_ANSWER, NOT_A_FILE } from './door';
import type { Refusal } from './door/types';
import { day, decimal, distance } from './format';
import { say, sayKey } from './words';

const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/;
const DISTANCE = /^(-?\d+) (km|mi)$/;
const NUMBER = /^-?\d+(\.\d+)?$/;

/** What the owner typed is quoted as he typed it. */
const QUOTED = 'text';
/** The values that are amounts; other digits are names, such as the number of an item or of a version. */
const AMOUNTS: readonly string[] = ['most', 'least', 'value', 'length', 'width', 'height'];

/** A refusal in one sentence. */
export function refusalText({ code, values }: Refusal): string {
  if (code === NO_ANSWER) return say('no-answer');
  if (code === NOT_A_FILE) return say('take-folder');
  const worded = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, valueText(name, value)]));
  if (code === 'reading-too-fast' && values.from === values.to) return onOneDay(worded);
  return sayKey(`refusal-${code}`, worded) ?? say('refused-unworded', { code });
}

function onOneDay({ reading = '', 'per-day': per_day = '', to = '' }: Record<string, string>): string {
  return say('refused-too-fast-one-day', { reading, 'per-day': per_day, day: to });
}

function valueText(name: string, value: string): string {
  if (name === QUOTED) return value;
  if (ISO_DAY.test(value)) return day(value);
  const [, count, unit] = DISTANCE.exec(value) ?? [];
  if (count !== undefined && unit !== undefined) return distance(Number(count), unit);
  return AMOUNTS.includes(name) && NUMBER.test(value) ? decimal(value) : value;
}
