// What one place hands to another, such as the figures of a receipt to the visit form. It waits in memory until the
// other place takes it, once; what is half filled in and has to outlast the page is kept by `device`.

const waiting = new Map<string, unknown>();

/** Hands something to whoever asks under this name. */
export function hand(name: string, what: unknown): void {
  waiting.set(name, what);
}

/** Takes what was handed under this name; nothing when there is none, or it was taken already. */
export function handed<T>(name: string): T | undefined {
  const what = waiting.get(name) as T | undefined;
  waiting.delete(name);
  return what;
}
