// Drafts where there is no database: they go into the simple store, and where there is none of that either they are
// forgotten without a word. The database itself is tested in a real browser (tests/browser/pump.test.mjs).

import { afterEach, expect, it, vi } from 'vitest';
import { stow, stowed, unstow } from './pocket';

afterEach(() => vi.unstubAllGlobals());

it('keeps, gives back and forgets', async () => {
  const held = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
    removeItem: (key: string) => void held.delete(key),
  });
  await stow('pump.b', { digits: '98' });
  expect(await stowed('pump.b')).toEqual({ digits: '98' });
  await unstow('pump.b');
  expect(await stowed('pump.b')).toBeUndefined();
});

it('goes on without any store', async () => {
  vi.stubGlobal('localStorage', undefined);
  vi.stubGlobal('indexedDB', undefined);
  await stow('pump.b', 1);
  expect(await stowed('pump.b')).toBeUndefined();
  await unstow('pump.b');
});
