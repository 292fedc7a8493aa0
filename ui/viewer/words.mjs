// Reads the words of the page at build time, so that the page needs neither a parser nor a request.
//
// Every language that has a `viewer.ftl` is taken in: its sentences as small patterns, and the names of the
// catalogue's items by their numbers.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

import { parse } from '@fluent/syntax';
import { parse as parseToml } from 'smol-toml';

const CRATES = fileURLToPath(new URL('../../src-tauri/crates/', import.meta.url));
const CATALOGUE = `${CRATES}rules/data/catalogue.toml`;
const LANGUAGES = `${CRATES}words/lang`;

/** A Vite plugin that serves the words as the module `virtual:words`. */
export function wordsPlugin() {
  const id = 'virtual:words';
  return {
    name: 'words',
    resolveId: (source) => (source === id ? `\0${id}` : undefined),
    load: (source) => (source === `\0${id}` ? `export default ${JSON.stringify(readLanguages())}` : undefined),
  };
}

/** All languages: tag -> { messages, items }. English is always there and the measure of the others. */
export function readLanguages() {
  const catalogue = parseToml(readFileSync(CATALOGUE, 'utf8'));
  const tags = readdirSync(LANGUAGES).filter((tag) => existsSync(`${LANGUAGES}/${tag}/viewer.ftl`));
  const languages = Object.fromEntries(tags.sort().map((tag) => [tag, readLanguage(tag, catalogue.item)]));
  const expected = Object.keys(languages.en.messages).sort().join();
  for (const tag of tags) {
    if (Object.keys(languages[tag].messages).sort().join() !== expected) {
      throw new Error(`${LANGUAGES}/${tag}/viewer.ftl has not the same messages as the English one.`);
    }
  }
  return languages;
}

function readLanguage(tag, catalogue) {
  const names = readMessages(`${LANGUAGES}/${tag}/catalogue.ftl`);
  const items = catalogue.map(({ number, key }) => {
    const name = names[`item-${key}`];
    if (typeof name !== 'string') throw new Error(`'${tag}' has no plain name for item ${number}, ${key}.`);
    return [number, name];
  });
  return { messages: readMessages(`${LANGUAGES}/${tag}/viewer.ftl`), items: Object.fromEntries(items) };
}

function readMessages(path) {
  const { body } = parse(readFileSync(path, 'utf8'));
  const junk = body.find((entry) => entry.type === 'Junk');
  if (junk) throw new Error(`${path} holds what is no Fluent: ${junk.content}`);
  const messages = body.filter((entry) => entry.type === 'Message');
  return Object.fromEntries(messages.map(({ id, value }) => [id.name.replace(/^viewer-/, ''), pattern(value, path)]));
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
      return { arg: expression.id.name };
    case 'SelectExpression':
      return choice(expression, path);
    default:
      throw new Error(`${path} uses ${expression.type}, which the viewer's formatter does not know.`);
  }
}

function choice({ selector, variants }, path) {
  if (selector.type !== 'VariableReference') throw new Error(`${path} chooses by something other than a variable.`);
  const named = variants.map(({ key, value }) => [key.name ?? key.value, pattern(value, path)]);
  const fallback = variants.findIndex((variant) => variant.default);
  return { by: selector.id.name, variants: Object.fromEntries(named), other: named[fallback][1] };
}
