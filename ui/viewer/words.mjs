// Reads the words of the page at build time, so that the page needs neither a parser nor a request.
//
// Every language that has a `viewer.ftl` is taken in: its sentences as small patterns, and the names of the
// catalogue's items. The page has an inflater for cards, so each language comes deflated, as one text in base64; so do
// the names of the messages and the numbers of the items, which stand there once for all languages.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';

import { parse } from '@fluent/syntax';
import { parse as parseToml } from 'smol-toml';

const CRATES = fileURLToPath(new URL('../../src-tauri/crates/', import.meta.url));
const CATALOGUE = `${CRATES}rules/data/catalogue.toml`;
const LANGUAGES = `${CRATES}words/lang`;

/** The messages that stand in the page itself and not in its script. */
const OUTSIDE = ['noscript'];

/** A Vite plugin that serves the words as the module `virtual:words`. */
export function wordsPlugin() {
  const id = 'virtual:words';
  return {
    name: 'words',
    resolveId: (source) => (source === id ? `\0${id}` : undefined),
    load: (source) => (source === `\0${id}` ? wordsModule() : undefined),
  };
}

function wordsModule() {
  const { item: items } = parseToml(readFileSync(CATALOGUE, 'utf8'));
  const ids = Object.keys(readMessages('en')).filter((id) => !OUTSIDE.includes(id));
  const languages = Object.fromEntries(tags().map((tag) => [tag, readLanguage(tag, ids, items)]));
  const names = packed([...ids, ...items.map(({ number }) => number)].join(' '));
  return `export const names = ${JSON.stringify(names)};\nexport const languages = ${JSON.stringify(languages)};`;
}

/** The languages of the page, in ascending order. */
export function tags() {
  return readdirSync(LANGUAGES).filter((tag) => existsSync(`${LANGUAGES}/${tag}/viewer.ftl`)).sort();
}

/** A language as the page unpacks it: its sentences in the order of `ids`, then the names of the items in theirs. */
function readLanguage(tag, ids, items) {
  const messages = readMessages(tag);
  const spare = Object.keys(messages).filter((id) => !ids.includes(id) && !OUTSIDE.includes(id));
  const missing = ids.filter((id) => messages[id] === undefined);
  if (spare.length + missing.length > 0) {
    throw new Error(`${LANGUAGES}/${tag}/viewer.ftl has not the same messages as the English one: ${[...spare, ...missing]}`);
  }
  const names = readFile(`${LANGUAGES}/${tag}/catalogue.ftl`);
  const named = items.map(({ number, key }) => {
    const name = names[`item-${key}`];
    if (typeof name !== 'string') throw new Error(`'${tag}' has no plain name for item ${number}, ${key}.`);
    return name;
  });
  return packed(JSON.stringify([...ids.map((id) => messages[id]), ...named]));
}

function packed(text) {
  return deflateRawSync(text, { level: 9, memLevel: 9 }).toString('base64');
}

/** The messages of one language's `viewer.ftl`, without what they all begin with. */
export function readMessages(tag) {
  const messages = readFile(`${LANGUAGES}/${tag}/viewer.ftl`);
  return Object.fromEntries(Object.entries(messages).map(([id, pattern]) => [id.replace(/^viewer-/, ''), pattern]));
}

function readFile(path) {
  const { body } = parse(readFileSync(path, 'utf8'));
  const junk = body.find((entry) => entry.type === 'Junk');
  if (junk) throw new Error(`${path} holds what is no Fluent: ${junk.content}`);
  const messages = body.filter((entry) => entry.type === 'Message');
  return Object.fromEntries(messages.map(({ id, value }) => [id.name, pattern(value, path)]));
}

/** A text alone becomes a string, anything else a list of its parts. */
function pattern({ elements }, path) {
  const parts = elements.map((element) => (element.type === 'TextElement' ? element.value : placeable(element, path)));
  return parts.every((part) => typeof part === 'string') ? parts.join('') : parts;
}

/** What the page's small formatter knows: a variable, a quoted text, and a choice by a variable. */
function placeable({ expression }, path) {
  switch (expression.type) {
    case 'StringLiteral':
      return expression.parse().value;
    case 'VariableReference':
      return [expression.id.name];
    case 'SelectExpression':
      return choice(expression, path);
    default:
      throw new Error(`${path} uses ${expression.type}, which the viewer's formatter does not know.`);
  }
}

/** The variable, the pattern of each of its forms, and the one for all others. */
function choice({ selector, variants }, path) {
  if (selector.type !== 'VariableReference') throw new Error(`${path} chooses by something other than a variable.`);
  const fallback = variants.find((variant) => variant.default);
  const named = variants.filter((variant) => variant !== fallback);
  const forms = named.map(({ key, value }) => [key.name ?? key.value, pattern(value, path)]);
  return [selector.id.name, Object.fromEntries(forms), pattern(fallback.value, path)];
}
