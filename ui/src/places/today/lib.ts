// The road ahead: where on the strip each stop stands, and what hangs there.
// All lengths are in rem, so that larger text makes the strip simpler rather than crowded.

import type { DueView, ItemView, PlannedVisitView, StateKey, TodayView } from '../../door/types';
import { daysBetween } from '../../format';
import { hasNoPlace, isNextIn } from './due';
import { dateTicks, distanceTicks, horizonDays, layScale, position, WORDY_WIDTH, type Scale, type Tick } from './scale';
import { bottom, dropWords } from './words';

const SOON_DAYS = 30;

/** Two stops of one kind that are nearer than this become one; visits stay apart as long as a finger can tell them. */
const STOP_WIDTH = 2.25;
const VISIT_WIDTH = 1;
const LEAST_APART = 1.6;

/** A place on the road: things that fall there by themselves, or visits that gather several. */
export interface Stop {
  /** From the left end of the strip. */
  x: number;
  /** From the road down to the words. */
  y: number;
  /** From where to where what hangs here may fall. */
  span: { from: number; to: number };
  /** The state of all that hangs there. */
  state: StateKey;
  /** The first and the last day of it. */
  days: { first: string; last: string };
  /** The visits; none where things hang by themselves. */
  visits: PlannedVisitView[];
  items: ItemView[];
  /** What is known of the items, where this is their next time. */
  due: DueView[];
  /** What hangs there in words, a line each before any of them is broken. */
  words: string[];
  /** It lies further back than the strip reaches. */
  before: boolean;
}

export interface Road {
  now: number;
  stops: Stop[];
  dates: Tick[];
  distances: Tick[];
  /** How far down the words reach. */
  depth: number;
  /** Items that are due beyond the end of the strip. */
  further: number;
  /** Items that nobody ever recorded, and for which nobody chose a day. */
  unrecorded: number;
}

/** What hangs at one place, before the strip has a width. */
interface Hung extends Omit<Stop, 'x' | 'y' | 'span' | 'words' | 'before' | 'days'> {
  day: string;
}

/** Lays the road out on a strip of this width; `wordsOf` says what hangs at one stop, line by line. */
export function layRoad(
  { due, visits, today, estimate }: Pick<TodayView, 'due' | 'visits' | 'today' | 'estimate'>,
  width: number,
  wordsOf: (stop: Stop) => string[],
): Road {
  const planned = due.filter(({ round }) => !round);
  const hung = [...visitsOn(planned, visits, today), ...byThemselves(planned, visits)].sort((a, b) => a.day.localeCompare(b.day));
  const days = hung.map(({ day }) => daysBetween(today, day));
  const horizon = horizonDays(days);
  const scale = layScale(Math.min(0, ...days), horizon, width);
  const within = hung.filter(({ day }) => daysBetween(today, day) <= horizon);
  const stops = stand(within, today, scale);
  for (const stop of stops) stop.words = wordsOf(stop);
  if (width >= WORDY_WIDTH) dropWords(stops);
  return {
    now: position(0, scale),
    stops,
    dates: dateTicks(today, scale),
    distances: estimate === null ? [] : distanceTicks(estimate, scale),
    depth: Math.max(0, ...stops.map(bottom)),
    further: beyond(planned, within),
    unrecorded: planned.filter((line) => hasNoPlace(line, visits)).length,
  };
}

function visitsOn(due: DueView[], visits: PlannedVisitView[], today: string): Hung[] {
  return visits.map((visit) => ({
    day: visit.day,
    state: visitState(daysBetween(today, visit.day)),
    visits: [visit],
    items: visit.items.map(({ item }) => item),
    due: due.filter((line) => isNextIn(visit, line.item)),
  }));
}

/** What is overdue hangs at the day on which it fell due, also when a visit ahead will see to it. */
function byThemselves(due: DueView[], visits: PlannedVisitView[]): Hung[] {
  const alone = due.filter((line) => line.state === 'overdue' || !visits.some((visit) => isNextIn(visit, line.item)));
  return alone.flatMap((line) => {
    const { day, state, item } = line;
    return day === null ? [] : [{ day, state, visits: [], items: [item], due: [line] }];
  });
}

function visitState(days: number): StateKey {
  if (days <= 0) return 'due';
  return days <= SOON_DAYS ? 'soon' : 'ahead';
}

/** Items with a day of which nothing hangs on the strip. */
function beyond(due: DueView[], within: Hung[]): number {
  const shown = (line: DueView) => within.some((hung) => hung.due.includes(line));
  return due.filter((line) => line.day !== null && !shown(line)).length;
}

function stand(hung: Hung[], today: string, scale: Scale): Stop[] {
  const stops: Stop[] = [];
  for (const { day, state, visits, items, due } of hung) {
    const days = daysBetween(today, day);
    const x = Math.min(Math.max(position(days, scale), STOP_WIDTH / 2), scale.width);
    const span = spanOf(due, days, today, scale);
    const last = stops.at(-1);
    if (last && isOne(last, state, visits, x)) {
      last.visits.push(...visits);
      last.items.push(...items);
      last.due.push(...due);
      last.days.last = day;
      last.span = { from: Math.min(last.span.from, span.from), to: Math.max(last.span.to, span.to) };
    } else {
      const apart = last ? Math.max(x, last.x + LEAST_APART) : x;
      const hung = { state, visits: [...visits], items: [...items], due: [...due] };
      stops.push({ ...hung, x: apart, y: 0, span, days: { first: day, last: day }, words: [], before: days < scale.startDays });
    }
  }
  return crowdedBack(stops, scale.width);
}

function isOne(last: Stop, state: StateKey, visits: PlannedVisitView[], x: number): boolean {
  const alike = last.state === state && last.visits.length > 0 === visits.length > 0;
  return alike && x - last.x < (visits.length > 0 ? VISIT_WIDTH : STOP_WIDTH);
}

/** Stops that were pushed over the end of the strip push the ones before them back. */
function crowdedBack(stops: Stop[], width: number): Stop[] {
  let edge = width;
  for (const stop of [...stops].reverse()) {
    stop.x = Math.min(stop.x, edge);
    edge = stop.x - LEAST_APART;
  }
  return stops;
}

/**
 * From the earliest day on which anything here may fall to the latest, as far as the strip reaches. What is
 * overdue at a visit has fallen already.
 */
function spanOf(due: DueView[], days: number, today: string, scale: Scale): Stop['span'] {
  const between = due.flatMap(({ between: span, state }) => (span === null || (state === 'overdue' && days >= 0) ? [] : [span]));
  const early = Math.min(days, ...between.map((span) => daysBetween(today, span.early)));
  const late = Math.max(days, ...between.map((span) => daysBetween(today, span.late)));
  const on = (day: number) => Math.min(Math.max(position(day, scale), 0), position(scale.endDays, scale));
  return { from: on(early), to: on(late) };
}
