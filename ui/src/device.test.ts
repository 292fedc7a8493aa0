// What the device remembers, and that it may refuse to.

import { afterEach, expect, it, vi } from 'vitest';
import { forget, keep, kept } from './device';

afterEach(() => vi.unstubAllGlobals());

function store(): Storage {
  const held = new Map<string, string>();
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
    removeItem: (key: string) => void held.delete(key),
  } as Storage;
}

it('keeps, gives back and forgets', () => {
  vi.stubGlobal('localStorage', store());
  keep('draft', { digits: '98' });
  expect(kept('draft')).toEqual({ digits: '98' });
  forget('draft');
  expect(kept('draft')).toBeUndefined();
});

it('takes what cannot be read for nothing', () => {
  const broken = store();
  broken.setItem('wellkept.draft', '{"digits":');
  vi.stubGlobal('localStorage', broken);
  expect(kept('draft')).toBeUndefined();
});

it('goes on without a store', () => {
  vi.stubGlobal('localStorage', undefined);
  keep('draft', 1);
  forget('draft');
  expect(kept('draft')).toBeUndefined();
});
