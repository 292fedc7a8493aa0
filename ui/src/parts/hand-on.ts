// Text that leaves the app: to whatever the device shares with, else to its clipboard, else to be selected by hand.

export type Handed = 'shared' | 'copied' | 'by-hand';

/** Hands a text on by the first way that the device has. Never throws. */
export async function handOn(text: string): Promise<Handed> {
  if (await shared(text)) return 'shared';
  return (await copied(text)) ? 'copied' : 'by-hand';
}

/** Whether the device took it; a reader who thinks better of it needs no second offer. */
async function shared(text: string): Promise<boolean> {
  if (!('share' in navigator)) return false;
  return navigator.share({ text }).then(
    () => true,
    (error: unknown) => error instanceof DOMException && error.name === 'AbortError',
  );
}

async function copied(text: string): Promise<boolean> {
  // A page that was not served safely has no clipboard.
  if (!('clipboard' in navigator)) return false;
  return navigator.clipboard.writeText(text).then(
    () => true,
    () => false,
  );
}
