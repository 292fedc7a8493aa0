// Builds elements. Text becomes text nodes and nothing else, so that nothing a card says can act as markup.

type Child = Node | string | null;

/** An element with attributes and children; a null child is left out. */
export function el<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  for (const child of children) if (child !== null) element.append(child);
  return element;
}

/** An element of a drawing. */
export function svg(name: string, attributes: Readonly<Record<string, string | number>>, ...children: readonly (Node | string)[]): SVGElement {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name) as SVGElement;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  element.append(...children);
  return element;
}

/** Does something when the page has been painted as it stands. */
export function afterPaint(work: () => void): void {
  requestAnimationFrame(() => setTimeout(work));
}

/** A text out of a card, set apart from the direction of the text around it. */
export function fromCard(text: string): HTMLElement {
  return el('bdi', {}, harmless(text));
}

/** Controls, and the characters that turn the direction of the text after them. */
const UNSEEN = /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;

/** A text out of a card inside a sentence, where no element can set it apart: an isolate (Unicode annex 9) does. */
export function isolated(text: string): string {
  return `\u2068${harmless(text)}\u2069`;
}

/** A text with its unseen controls made visible: an ASCII control as its picture, another as a replacement character. */
export function harmless(text: string): string {
  return text.replace(UNSEEN, (control) => {
    const code = control.charCodeAt(0);
    if (code < 0x20) return String.fromCharCode(0x2400 + code);
    return code === 0x7f ? '\u2421' : '\ufffd';
  });
}
