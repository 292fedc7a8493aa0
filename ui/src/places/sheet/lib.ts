// The sheet: what a plan line says, and the form in which a handbook's interval is taken.

import type { IntervalForm, IntervalView, PlanForm, PlanLine } from '../../door/types';
import { interval } from '../../format';
import { say } from '../../words';
import { sourceText } from '../today/due';

export interface HandbookForm {
  then: IntervalForm;
  first: IntervalForm;
  /** The first interval differs. */
  differs: boolean;
}

/** Starts from the interval that holds now, so that only what differs has to be typed. */
export function handbookForm(unit: string, line?: PlanLine): HandbookForm {
  return {
    then: intervalForm(unit, line?.interval),
    first: intervalForm(unit, line?.first ?? undefined),
    differs: line?.first != null,
  };
}

export function planChange({ then, first, differs }: HandbookForm): PlanForm {
  return differs ? { to: 'handbook', then, first } : { to: 'handbook', then };
}

/** The interval that holds and whose it is. */
export function planText({ interval: then, first, source, source_name, off }: PlanLine): string {
  if (off) return say('plan-off');
  const every = say('plan-every', { interval: interval(then), source: sourceText(source, source_name) });
  return first === null ? every : `${say('plan-first', { interval: interval(first) })} ${every}`;
}

function intervalForm(unit: string, view?: IntervalView): IntervalForm {
  const { distance, months } = view ?? { distance: null, months: null };
  return { distance: distance === null ? '' : String(distance.count), unit: distance?.unit ?? unit, months: months ?? '' };
}
