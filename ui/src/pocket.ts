// What must outlast the app being killed in the middle of a word. A browser writes its simple store to the disk only
// seconds later (five in Chromium, as measured), but a database transaction at once, so that the draft goes there;
// where there is no database it goes into the simple store after all.

import { createStore, del, get, set, type UseStore } from 'idb-keyval';
import { forget, keep, kept } from './device';

let store: UseStore | undefined;

function opened(): UseStore {
  return (store ??= createStore('wellkept', 'drafts'));
}

/** Keeps a value as soon as the device can; never fails. */
export async function stow(key: string, value: unknown): Promise<void> {
  try {
    await set(key, value, opened());
  } catch {
    keep(key, value);
  }
}

/** What was kept last; nothing when there is none, or none can be kept. */
export async function stowed<T>(key: string): Promise<T | undefined> {
  try {
    return (await get<T>(key, opened())) ?? kept<T>(key);
  } catch {
    return kept<T>(key);
  }
}

export async function unstow(key: string): Promise<void> {
  forget(key);
  try {
    await del(key, opened());
  } catch {
    // Where nothing can be kept, nothing is left behind.
  }
}
