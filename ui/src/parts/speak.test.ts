// A device reads out what it is given, and one without a voice stays silent.

import { afterEach, describe, expect, it, vi } from 'vitest';
import { canSpeak, speak } from './speak';

afterEach(() => vi.unstubAllGlobals());

describe('reading out', () => {
  it('stops what is being read before it reads on', () => {
    const said: string[] = [];
    vi.stubGlobal('SpeechSynthesisUtterance', class { lang = ''; constructor(readonly text: string) {} });
    vi.stubGlobal('speechSynthesis', { cancel: () => said.push('stop'), speak: ({ text }: { text: string }) => said.push(text) });
    speak('25 newton metres');
    expect(canSpeak()).toBe(true);
    expect(said).toEqual(['stop', '25 newton metres']);
  });

  it('is silent without a voice, and when the voice fails', () => {
    expect(canSpeak()).toBe(false);
    expect(() => speak('25')).not.toThrow();
    vi.stubGlobal('SpeechSynthesisUtterance', class {});
    vi.stubGlobal('speechSynthesis', { cancel: () => { throw new Error('no'); }, speak: () => undefined });
    expect(() => speak('25')).not.toThrow();
  });
});
