// Where the page begins: reads what stands after the `#` of its address, and again whenever that changes.

import './page.css';

import { afterPaint } from './dom';
import { languageChoice } from './language';
import { type Card, digitsIn, readCard } from './read';
import { Refusal } from './refusal';
import { showCard, showInvitation, showRefusal } from './view';
import { Words } from './words';

const page = document.getElementById('page') as HTMLElement;
const top = document.getElementById('top') as HTMLElement;
let words: Words;

speak(Words.for(navigator.languages));
addEventListener('hashchange', () => void show(true));
void show(false);

/** From now on the page says everything in these words. */
function speak(chosen: Words): void {
  words = chosen;
  document.documentElement.lang = words.tag;
  top.replaceChildren(languageChoice(words, (tag) => {
    // The reader's own region writes days and numbers, where he has one for this language.
    speak(Words.for([...navigator.languages.filter((locale) => locale.split('-')[0] === tag), tag]));
    void show(false);
    top.querySelector('select')?.focus();
  }));
}

/** Shows what the address holds. Who came by a link in the page is led to the new content's heading. */
async function show(lead: boolean): Promise<void> {
  const digits = fragment();
  if (digits === '') {
    showInvitation(page, words, open);
  } else {
    const outcome = await attempt(digits);
    // Another card may have been opened while this one was being verified.
    if (fragment() !== digits) return;
    if (outcome instanceof Refusal) showRefusal(page, words, outcome.fault, open);
    else showCard(page, words, outcome);
  }
  if (lead) {
    scrollTo(0, 0);
    afterPaint(() => page.querySelector<HTMLElement>('[tabindex], textarea')?.focus());
  }
}

async function attempt(digits: string): Promise<Card | Refusal> {
  try {
    return await readCard(digits);
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
}

function fragment(): string {
  return location.hash.slice(1);
}

/** Opens pasted text as if it had been scanned; the same text again is read again. */
function open(pasted: string): void {
  const digits = digitsIn(pasted);
  if (fragment() === digits) void show(true);
  else location.hash = digits;
}
