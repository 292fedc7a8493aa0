// A value read out, for hands that are busy and eyes that are elsewhere. Only where the device has a voice.

import { locale } from '../words';

/** Whether this device can read out. */
export function canSpeak(): boolean {
  return typeof globalThis.speechSynthesis?.speak === 'function' && typeof globalThis.SpeechSynthesisUtterance === 'function';
}

/** Reads a text out, in place of what is being read. Never throws: a device without a voice stays silent. */
export function speak(text: string): void {
  if (!canSpeak()) return;
  try {
    const spoken = new SpeechSynthesisUtterance(text);
    spoken.lang = locale;
    speechSynthesis.cancel();
    speechSynthesis.speak(spoken);
  } catch {
    // The text stands on the screen all the same.
  }
}
