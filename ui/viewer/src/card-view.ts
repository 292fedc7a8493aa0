// A card on the page: the proof and what it means, the car, its way, what to ask, the visits, what comes next.

import type { Claims, InstrumentChange, NextDue, Unit, Vehicle, Visit } from './claims';
import { compareView } from './compare-view';
import { afterPaint, el, fromCard, isolated } from './dom';
import { plot, yearOf } from './plot';
import { type Question, questions } from './questions';
import { type Card, hexGroups } from './read';
import { DAY_MS, type Values, type Words } from './words';

/**
 * The sections of a card, in the order in which a buyer should meet them, on a page so many pixels wide.
 *
 * The proof and the car stand there at once, and fill a phone; what is below them comes when these have been painted.
 */
export function cardView(card: Card, words: Words, width: number): HTMLElement[] {
  const { claims } = card;
  const rest = el('div', { 'aria-busy': 'true' });
  afterPaint(() => {
    const sections = [
      plot(claims, words, width),
      ask(claims, words),
      visits(claims, words),
      next(claims, words),
      instruments(claims, words),
      compareView(card, words),
      colophon(card, words),
    ];
    rest.append(...sections.filter((section) => section !== null));
    rest.removeAttribute('aria-busy');
  });
  return [el('h1', { class: 'kicker' }, words.say('title')), proof(card, words), car(claims, words), rest];
}

function proof({ claims, fingerprint }: Card, words: Words): HTMLElement {
  return el('section', { class: 'proof' },
    el('h2', { tabindex: '-1' }, words.say('proof-heading')),
    el('p', { class: 'verdict' }, words.say('proof', { day: words.day(claims.issued), key: unbroken(fingerprint) })),
    el('p', {}, words.say('proof-limits')),
  );
}

function car({ vehicle, latest, unit }: Claims, words: Words): HTMLElement {
  const reading = words.distance(latest.reading, unit);
  return el('section', { class: 'car' },
    el('h2', {}, fromCard(vehicle.name)),
    el('dl', {},
      ...fact(words.say('car-latest'), words.say('car-latest-on', { reading, day: words.day(latest.day) })),
      ...vehicleFacts(vehicle, words),
    ),
  );
}

function vehicleFacts({ description, engine, vin, firstUse }: Vehicle, words: Words): HTMLElement[] {
  return [
    ...(description === undefined ? [] : fact(words.say('car-description'), fromCard(description))),
    ...(engine === undefined ? [] : fact(words.say('car-engine'), words.say(`engine-${engine}`))),
    ...(firstUse === undefined ? [] : fact(words.say('car-first-use'), words.day(firstUse))),
    ...(vin === undefined ? [] : fact(words.say('car-vin'), fromCard(vin))),
  ];
}

function fact(name: string, value: Node | string): HTMLElement[] {
  return [el('dt', {}, name), el('dd', {}, value)];
}

function ask(claims: Claims, words: Words): HTMLElement {
  const now = new Date();
  const today = Math.floor(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / DAY_MS);
  const lines = questions(claims, today).map((question) => el('li', {}, words.say(`ask-${question.kind}`, places(question, claims.unit, words))));
  return el('section', { class: 'ask' },
    el('h2', {}, words.say('ask-heading')),
    el('ul', {}, ...lines),
    el('p', { class: 'small' }, words.say('ask-note')),
  );
}

/** What fills the places of a question's sentence, as the reader writes days and distances. */
function places({ count, of, day, reading, then, shown, items }: Question, unit: Unit, words: Words): Values {
  const dayOf = (one: number | undefined): string => (one === undefined ? '' : words.day(one));
  const distance = (one: number | undefined): string => (one === undefined ? '' : words.distance(one, unit));
  return {
    count: count ?? 0,
    of: of ?? 0,
    day: dayOf(day),
    then: dayOf(then),
    reading: distance(reading),
    shown: distance(shown),
    items: (items ?? []).map((item) => isolated(words.item(item))).join('; '),
  };
}

function visits({ visits, leftOut, unit }: Claims, words: Words): HTMLElement {
  const count = visits.length;
  return el('section', { class: 'visits' },
    el('h2', {}, words.say('visits-heading')),
    el('p', { class: 'small' }, count === 0 ? words.say('visits-none') : words.say('visits-shown', { count })),
    ...years([...visits].reverse(), unit, words),
    leftOut === 0 ? null : el('p', { class: 'left-out' }, words.say('visits-left-out', { count: leftOut })),
  );
}

/** Visits under their years, both in the order given. */
function years(visits: readonly Visit[], unit: Unit, words: Words): HTMLElement[] {
  const lists = new Map<number, HTMLElement>();
  for (const one of visits) {
    const year = yearOf(one.day);
    const list = lists.get(year) ?? el('ol');
    lists.set(year, list);
    list.append(visit(one, unit, words));
  }
  return [...lists].flatMap(([year, list]) => [el('h3', {}, String(year)), list]);
}

function visit({ day, reading, flags, items }: Visit, unit: Unit, words: Words): HTMLElement {
  const named = items.map((item) => el('li', {}, fromCard(words.item(item))));
  const marks = (['receipt', 'photo', 'late', 'amended'] as const).filter((mark) => flags.has(mark));
  return el('li', {},
    el('div', { class: 'when' },
      el('span', {}, words.day(day)),
      el('span', { class: 'reading' }, words.distance(reading, unit)),
    ),
    el('ul', { class: 'items' }, ...(named.length > 0 ? named : [el('li', { class: 'small' }, words.say('visit-no-items'))])),
    el('div', { class: `stamp ${who(flags)}` }, words.say(`who-${who(flags)}`)),
    el('ul', { class: 'marks' }, ...marks.map((mark) => el('li', { class: mark }, words.say(`mark-${mark}`)))),
  );
}

function who(flags: Visit['flags']): string {
  if (flags.has('owner')) return flags.has('workshop') ? 'both' : 'owner';
  return flags.has('workshop') ? 'workshop' : 'unsaid';
}

function next({ next, unit }: Claims, words: Words): HTMLElement | null {
  if (next.length === 0) return null;
  const lines = next.map((due) => el('li', {}, fromCard(words.item(due.item)), el('span', { class: 'due' }, when(due, unit, words))));
  return el('section', { class: 'next' }, el('h2', {}, words.say('next-heading')), el('ul', {}, ...lines));
}

function when({ day, reading }: NextDue, unit: Unit, words: Words): string {
  const values = {
    day: day === null ? '' : words.day(day),
    reading: reading === null ? '' : words.distance(reading, unit),
  };
  if (day !== null && reading !== null) return words.say('next-either', values);
  if (day !== null) return words.say('next-on-day', values);
  if (reading !== null) return words.say('next-at-reading', values);
  return words.say('next-open');
}

function instruments({ instruments, unit }: Claims, words: Words): HTMLElement | null {
  if (instruments.length === 0) return null;
  const line = ({ day, oldReading, newReading }: InstrumentChange): HTMLElement => {
    const values = { day: words.day(day), old: words.distance(oldReading, unit), new: words.distance(newReading, unit) };
    return el('li', {}, words.say('instrument', values));
  };
  return el('section', { class: 'instruments' }, el('h2', {}, words.say('instruments-heading')), el('ul', {}, ...instruments.map(line)));
}

function colophon({ claims, fingerprint }: Card, words: Words): HTMLElement {
  const { head } = claims;
  return el('footer', {},
    el('h2', {}, words.say('head-heading')),
    el('dl', {},
      ...fact(words.say('head-key'), el('code', {}, fingerprint)),
      ...(head === undefined ? [] : fact(words.say('head'), el('code', {}, hexGroups(head)))),
    ),
    el('p', { class: 'small' }, words.say('private-card')),
    el('p', { class: 'small screen' }, el('a', { href: '#' }, words.say('another'))),
  );
}

/** The groups of a fingerprint belong on one line. */
function unbroken(fingerprint: string): string {
  return fingerprint.replace(/ /g, '\u00a0');
}
