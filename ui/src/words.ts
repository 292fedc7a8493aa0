// Everything that is said on screen, out of the Fluent files that the other faces read too.

import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { Words } from './words/ids';

export type MessageId = keyof Words;
export type Value = string | number;

/** What a message takes: nothing, or one value for each of its names. */
type Takes<I extends MessageId> = [Words[I]] extends [never] ? [] : [values: Record<Words[I], Value>];

const FALLBACK = 'en';

const files = import.meta.glob<string>('../../src-tauri/crates/words/lang/*/{catalogue,refusals,ui}.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const languages = new Set(Object.keys(files).map(folderOf));

/** The language on screen: the first that the reader wants and that there is. */
export const language = wanted().map(primary).find((tag) => languages.has(tag)) ?? FALLBACK;

/** The locale of dates and numbers: the reader's own region where he has one for this language. */
export const locale = wanted().find((tag) => primary(tag) === language) ?? (language === 'en' ? 'en-GB' : language);

const bundles = language === FALLBACK ? [bundle(FALLBACK)] : [bundle(language), bundle(FALLBACK)];

/** Says a message of the ui. */
export function say<I extends MessageId>(id: I, ...[values]: Takes<I>): string {
  return sayKey(id, values) ?? id;
}

/** Says a message whose name comes from the core, such as `item-KEY`; nothing when no file has it. */
export function sayKey(id: string, values: Record<string, Value> = {}): string | undefined {
  for (const words of bundles) {
    const pattern = words.getMessage(id)?.value;
    if (pattern) return words.formatPattern(pattern, values, []);
  }
  return undefined;
}

/** A list in words: 'one, two and three'. */
export function list(words: string[]): string {
  return new Intl.ListFormat(locale, { type: 'conjunction' }).format(words);
}

/** One of several in words: 'one, two or three'. */
export function either(words: string[]): string {
  return new Intl.ListFormat(locale, { type: 'disjunction' }).format(words);
}

function bundle(tag: string): FluentBundle {
  // The marks that isolate directions are left out: they would stand in every text that is copied or searched.
  const words = new FluentBundle(tag === language ? [locale, tag] : [tag], { useIsolating: false });
  for (const [path, text] of Object.entries(files)) {
    if (folderOf(path) === tag) words.addResource(new FluentResource(text));
  }
  return words;
}

function wanted(): readonly string[] {
  return globalThis.navigator?.languages ?? [];
}

function primary(tag: string): string {
  return tag.split('-')[0] ?? tag;
}

function folderOf(path: string): string {
  return path.split('/').at(-2) ?? FALLBACK;
}
