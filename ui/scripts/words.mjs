// Writes src/words/ids.ts: the name of every message in the English words of the ui, and the names of what
// each one takes, so that a misspelt word is a type error. `npm run words` runs it; a test fails when it is stale.

import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { FluentResource } from '@fluent/bundle';

const source = new URL('../../src-tauri/crates/words/lang/en/ui.ftl', import.meta.url);
export const target = new URL('../src/words/ids.ts', import.meta.url);

/** The names of the variables in a pattern, in order of appearance. */
function variables(part) {
  if (Array.isArray(part)) return part.flatMap(variables);
  if (part === null || typeof part !== 'object') return [];
  if (part.type === 'var') return [part.name];
  return Object.values(part).flatMap(variables);
}

/** The text of ids.ts for the English words as they stand. */
export function ids() {
  const messages = new FluentResource(readFileSync(source, 'utf8')).body.filter(({ id }) => !id.startsWith('-'));
  const lines = messages.map(({ id, value }) => {
    const names = [...new Set(variables(value))].map((name) => `'${name}'`);
    return `  '${id}': ${names.join(' | ') || 'never'};`;
  });
  return [
    '// Made by `npm run words` from the English words; not written by hand.',
    '// Longer than 400 lines because it has a line for every message.',
    '',
    '/** Every message of the ui, and the names of what it takes. */',
    'export interface Words {',
    ...lines,
    '}',
    '',
  ].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(target, ids());
