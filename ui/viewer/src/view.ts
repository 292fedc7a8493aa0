// What the page shows: an invitation, a refusal, or a card. Each replaces whatever stood there before.

import { cardView } from './card-view';
import { el, harmless } from './dom';
import { pasteForm } from './paste';
import type { Card } from './read';
import type { Fault } from './refusal';
import type { Words } from './words';

/** A short page that says what this is, and takes a card's text. */
export function showInvitation(page: HTMLElement, words: Words, onPaste: (text: string) => void): void {
  document.title = words.say('title');
  page.replaceChildren(
    el('h1', {}, words.say('about-heading')),
    el('p', {}, words.say('about')),
    pasteForm(words, words.say('paste-label'), words.say('paste-button'), onPaste),
    el('p', { class: 'small' }, words.say('private')),
  );
}

/** The sentence that says why, the paste field, and nothing of the card. */
export function showRefusal(page: HTMLElement, words: Words, fault: Fault, onPaste: (text: string) => void): void {
  document.title = words.say('title');
  page.replaceChildren(
    el('section', { class: 'refusal', role: 'alert' },
      el('h1', {}, words.say('refused-heading')),
      el('p', {}, words.say(`refused-${fault}`)),
    ),
    pasteForm(words, words.say('paste-label'), words.say('paste-button'), onPaste),
  );
}

/** The card, its proof first. */
export function showCard(page: HTMLElement, words: Words, card: Card): void {
  document.title = words.say('title-of', { name: harmless(card.claims.vehicle.name) });
  page.replaceChildren(...cardView(card, words, page.clientWidth));
}
