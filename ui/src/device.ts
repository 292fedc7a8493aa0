// What this device remembers between two visits: the last car, the theme, a form that is half filled in.
// Nothing here is part of the book, and the ui works the same where a browser keeps nothing.

const PREFIX = 'wellkept.';

/** The kept value, or `undefined` when there is none or it cannot be read. */
export function kept<T>(key: string): T | undefined {
  try {
    const text = localStorage.getItem(PREFIX + key);
    return text === null ? undefined : (JSON.parse(text) as T);
  } catch {
    return undefined;
  }
}

/** Keeps a value; a device that refuses to keep it only forgets it. */
export function keep(key: string, value: unknown): void {
  try {
    localStorage.setItem(PREFIX + key, JSON.stringify(value));
  } catch {
    // A full or forbidden store costs the draft, never the book.
  }
}

export function forget(key: string): void {
  try {
    localStorage.removeItem(PREFIX + key);
  } catch {
    // See `keep`.
  }
}
