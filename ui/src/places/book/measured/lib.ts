// Values read off a scan tool or a meter: what a form sends, and what can be said of each.

import type { DriftView, JumpView, LimitsView, MeasuredForm, MeasuredValueForm, ParameterView } from '../../../door/types';
import { day, dayTime, measuredValue } from '../../../format';
import type { Point } from '../../../parts/plot/scales';
import { say, sayKey } from '../../../words';
import { signed } from '../running/watch';

/** By parameter what stands in its field. */
export type Typed = Record<string, string>;

/** What goes to the door: only the fields in which something stands. */
export function measuredForm(day: string, typed: Typed, pasted: boolean): MeasuredForm {
  const values = Object.entries(typed).flatMap(([parameter, value]) => (value.trim() === '' ? [] : [{ parameter, value: value.trim() }]));
  return { day, values, pasted };
}

/** The fields with what was found in pasted lines; what was not found keeps what stands there. */
export function withRead(typed: Typed, read: MeasuredValueForm[]): Typed {
  return { ...typed, ...Object.fromEntries(read.map(({ parameter, value }) => [parameter, value])) };
}

/** By which path a refusal names the field of a parameter: the place of its value among those that are sent. */
export function pathOf(typed: Typed, parameter: string): string {
  const sent = measuredForm('', typed, false).values.findIndex((value) => value.parameter === parameter);
  return sent < 0 ? '' : `measured.values.${sent}.value`;
}

export function nameOf(key: string): string {
  return sayKey(`parameter-${key}`) ?? key;
}

/** Within which limits it usually lies, and whose limits they are. */
export function limitsText({ low, high, source }: LimitsView, unit: string): string {
  const whose = source === 'common practice' ? say('limit-common') : say('limit-of', { source });
  if (low !== null && high !== null) return say('measured-between', { low: measuredValue(low, unit), high: measuredValue(high, unit), source: whose });
  if (low !== null) return say('measured-from', { low: measuredValue(low, unit), source: whose });
  if (high !== null) return say('measured-to', { high: measuredValue(high, unit), source: whose });
  return say('measured-no-limit');
}

export function jumpText({ since, size }: JumpView, unit: string): string {
  return say('measured-jump', { since: day(since), size: `${signed(size)}\u00a0${unit}` });
}

/** A span of an estimate says no more than two figures of either end. */
export function driftText({ low, high }: DriftView, unit: string): string {
  const end = (text: string) => `${signed(String(Number(Number(text).toPrecision(2))))}\u00a0${unit}`;
  return say('measured-drift', { low: end(low), high: end(high) });
}

/** The values to draw: one that no instrument shows would squeeze the others into a line. */
export function plottedOf({ points }: ParameterView): (Point & { outside: boolean })[] {
  return points
    .filter(({ judgement }) => judgement !== 'implausible')
    .map(({ day: on, milli, judgement }) => ({ time: dayTime(on), value: milli / 1000, outside: judgement !== 'usual' }));
}

/** The limits as numbers. */
export function limitLines({ low, high }: LimitsView): number[] {
  return [low, high].flatMap((limit) => (limit === null ? [] : [Number(limit)]));
}

/** The values as rows of a table, newest first. */
export function valueRows({ points, unit }: ParameterView): string[][] {
  return points.toReversed().map((point) => [day(point.day), measuredValue(point.value, unit), judgementText(point.judgement)]);
}

export function judgementText(judgement: string): string {
  return sayKey(`judgement-${judgement}`) ?? judgement;
}

/** The plot in a sentence; nothing without a value. */
export function measuredSentence({ key, unit, points }: ParameterView): string {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return '';
  const words = { what: nameOf(key), count: points.length, from: day(first.day), to: day(last.day) };
  return say('measured-says', { ...words, last: measuredValue(last.value, unit) });
}
