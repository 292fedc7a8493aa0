// Holding an older card against the one on the page.

import { compare, type Difference } from './compare';
import { el } from './dom';
import { pasteForm } from './paste';
import { type Card, digitsIn, readCard } from './read';
import { Refusal } from './refusal';
import type { Words } from './words';

/** No more differences than this are told one by one. */
const TOLD = 20;

/** A form for the other card, and below it what came of it. */
export function compareView(card: Card, words: Words): HTMLElement {
  const result = el('div', { role: 'status' });
  const [label, button] = [words.say('compare-label'), words.say('compare-button')];
  const form = pasteForm(words, label, button, (text) => void attempt(text).then((told) => result.replaceChildren(...told)));
  return el('section', { class: 'compare screen' }, el('h2', {}, words.say('compare-heading')), form, result);

  async function attempt(text: string): Promise<HTMLElement[]> {
    try {
      return outcome(card, await readCard(digitsIn(text)), words);
    } catch (error) {
      if (error instanceof Refusal) return [el('p', { class: 'warn' }, words.say(`refused-${error.fault}`))];
      throw error;
    }
  }
}

function outcome(card: Card, other: Card, words: Words): HTMLElement[] {
  const { older, newer, sameKey, carKnown, same, contained, differences } = compare(card, other);
  const values = { older: words.day(older), newer: words.day(newer), count: same };
  const verdict = words.say(contained ? (same > 0 ? 'compare-contained' : 'compare-nothing') : 'compare-differs', values);
  const lines = differences.slice(0, TOLD).map((one) => el('li', {}, line(one, words)));
  const more = differences.length - TOLD;
  if (more > 0) lines.push(el('li', {}, words.say('compare-more', { count: more })));
  return [
    el('p', { class: contained ? 'verdict' : 'verdict warn' }, verdict),
    el('ul', {}, ...lines),
    el('p', {}, words.say(sameKey ? 'compare-same-key' : 'compare-other-key')),
    ...(carKnown ? [] : [el('p', {}, words.say('compare-car-unknown'))]),
  ];
}

function line({ kind, day, amended }: Difference, words: Words): string {
  return words.say(`compare-${kind}`, { day: day === undefined ? '' : words.day(day), amended: amended === true ? 'yes' : 'no' });
}
