// Everything that is said on screen, out of the Fluent files that the other faces read too.

import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { Words } from './words/ids';

export type MessageId = keyof Words;
export type Value = string | number;

/** What a message takes: nothing, or one value for each of its names. */
type Takes<I extends MessageId> = [Words[I]] extends [never] ? [] : [values: Record<Words[I], Value>];

const FALLBACK = 'en';

const files = import.meta.glob<string>('../../src-tauri/crates/words/lang/*/{catalogue,codes,fuel,guides,refusals,trouble,ui}.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The languages that have every file that English has: the card speaks more, and nobody is spoken to in two at once. */
const languages = wholeLanguages(Object.keys(files));

/** The language on screen: the first that the reader wants and that there is. */
export const language = firstOf(languages);

/** The locale of dates and numbers: the reader's own region where he has one for this language. */
export const locale = wanted().find((tag) => primary(tag) === language) ?? (language === 'en' ? 'en-GB' : language);

/** Long files that only the Bay needs: they are read at the first word that the others lack, and not at the start. */
const READ_LATE = /\/(codes|guides|trouble)\.ftl$/;

const bundles = language === FALLBACK ? [bundle(FALLBACK)] : [bundle(language), bundle(FALLBACK)];

/** Says a message of the ui. */
export function say<I extends MessageId>(id: I, ...[values]: Takes<I>): string {
  return sayKey(id, values) ?? id;
}

/** Says a message whose name comes from the core, such as `item-KEY`; nothing when no file has it. */
export function sayKey(id: string, values: Record<string, Value> = {}): string | undefined {
  for (const { words, late } of bundles) {
    if (!words.hasMessage(id)) for (const text of late.splice(0)) words.addResource(new FluentResource(text));
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

/** The words of one language, and the texts of the files that are yet to be read. */
interface Bundle {
  words: FluentBundle;
  late: string[];
}

function bundle(tag: string): Bundle {
  // The marks that isolate directions are left out: they would stand in every text that is copied or searched.
  const words = new FluentBundle(tag === language ? [locale, tag] : [tag], { useIsolating: false });
  const own = Object.entries(files).filter(([path]) => folderOf(path) === tag);
  const [late, now] = [true, false].map((is) => own.filter(([path]) => READ_LATE.test(path) === is).map(([, text]) => text));
  for (const text of now ?? []) words.addResource(new FluentResource(text));
  return { words, late: late ?? [] };
}

function wholeLanguages(paths: readonly string[]): ReadonlySet<string> {
  const english = paths.filter((path) => folderOf(path) === FALLBACK);
  const has = (tag: string) => english.every((path) => paths.includes(path.replace(`/${FALLBACK}/`, `/${tag}/`)));
  return new Set(paths.map(folderOf).filter(has));
}

function wanted(): readonly string[] {
  return globalThis.navigator?.languages ?? [];
}

/** The first of the languages that a reader wants which is one of these, or English. */
export function firstOf<Tag extends string>(spoken: Iterable<Tag>, tags = wanted()): Tag | typeof FALLBACK {
  const known: ReadonlySet<string> = new Set(spoken);
  return (tags.map(primary).find((tag) => known.has(tag)) as Tag | undefined) ?? FALLBACK;
}

function primary(tag: string): string {
  return (tag.split('-')[0] ?? tag).toLowerCase();
}

function folderOf(path: string): string {
  return path.split('/').at(-2) ?? FALLBACK;
}
