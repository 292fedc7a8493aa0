import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { readClaims } from './claims';
import { type Question, questions } from './questions';
import { hex } from './test-card';

/** Written by the core's own test, which fails when the file is stale. */
const VECTOR_FILE = new URL('../../../src-tauri/crates/card/tests/questions-vector.json', import.meta.url);

interface History {
  readonly name: string;
  readonly today: number;
  readonly claims: string;
  readonly questions: readonly Question[];
}

const histories = JSON.parse(readFileSync(VECTOR_FILE, 'utf8')) as readonly History[];

describe('the page asks what the core asks', () => {
  it.each(histories.map((history) => [history.name, history] as const))('%s', (_, history) => {
    expect(questions(readClaims(hex(history.claims)), history.today)).toEqual(history.questions);
  });
});

it('of every kind there is', () => {
  expect(histories.length).toBeGreaterThan(90);
  const kinds = new Set(histories.flatMap((history) => history.questions.map(({ kind }) => kind)));
  expect(kinds.size).toBe(15);
});
