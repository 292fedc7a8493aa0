// Choosing the language of the page, where the browser's own is not the reader's.

import { el } from './dom';
import { TAGS, type Words } from './words';

/** A small choice in which each language stands under its own name. */
export function languageChoice(words: Words, onChoice: (tag: string) => void): HTMLElement {
  const options = TAGS.map((tag) => el('option', { value: tag, lang: tag }, ownName(tag)));
  const choice = el('select', { 'aria-label': words.say('language') }, ...options);
  choice.value = words.tag;
  choice.addEventListener('change', () => onChoice(choice.value));
  return choice;
}

function ownName(tag: string): string {
  return new Intl.DisplayNames(tag, { type: 'language' }).of(tag) ?? tag;
}
