// How large a number may stand so that it fills the screen and breaks nowhere.

/** A letter of the typeface is at most this part of its size wide; capital W and M are rare in part numbers. */
const LETTER = 0.68;

/** The size of a number that breaks between its words, in hundredths of the width of the screen. */
export function numberSize(text: string): number {
  return fit(Math.max(...wordsOf(text).map((word) => word.length)));
}

/** The size at which the whole number stands on one line, in the same measure. */
export function lineSize(text: string): number {
  return fit(wordsOf(text).join(' ').length);
}

/** The words between which it may break. */
export function wordsOf(text: string): string[] {
  return text.trim().split(/\s+/);
}

function fit(letters: number): number {
  return Math.min(22, 88 / (Math.max(4, letters) * LETTER));
}
