// Taking a card's text in: pasted, or read through the camera where the browser can.

import { el } from './dom';
import { canScan, scan } from './scan';
import type { Words } from './words';

/** A form with this label and button, that hands over a text. */
export function pasteForm(words: Words, label: string, button: string, onText: (text: string) => void): HTMLElement {
  const field = el('textarea', {
    id: 'paste', rows: '4', required: '', spellcheck: 'false', autocomplete: 'off', autocapitalize: 'off',
    inputmode: 'text', 'aria-describedby': 'paste-hint',
  });
  const form = el('form', {},
    el('label', { for: 'paste' }, label),
    el('p', { id: 'paste-hint', class: 'small' }, words.say('paste-hint')),
    field,
    el('button', {}, button),
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    onText(field.value);
  });
  void canScan().then((can) => {
    if (can) form.append(scanner(words, onText));
  });
  return form;
}

/** A button that opens the camera below itself, and closes it again. */
function scanner(words: Words, onText: (text: string) => void): HTMLElement {
  const video = el('video', { playsinline: '' });
  video.muted = true;
  const said = el('p', { role: 'status' });
  const button = el('button', { type: 'button', class: 'second' }, words.say('scan-button'));
  button.addEventListener('click', () => {
    if (video.isConnected) return video.remove();
    said.textContent = '';
    button.after(video);
    scan(video)
      .then((text) => text !== '' && onText(text))
      .catch(() => (said.textContent = words.say('scan-failed')))
      .finally(() => video.remove());
  });
  return el('div', {}, button, said);
}
