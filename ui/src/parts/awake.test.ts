// The screen is held while it is wanted, and let go when it no longer is, even when the device answers late.
// Source of the ways of a device: the W3C's Screen Wake Lock API, from memory.

import { afterEach, describe, expect, it, vi } from 'vitest';
import { stayAwake } from './awake';

function device(answer: () => Promise<{ release(): Promise<void> }>) {
  const request = vi.fn(answer);
  const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  vi.stubGlobal('navigator', { wakeLock: { request } });
  vi.stubGlobal('document', page);
  return { request, page };
}

const settled = () => new Promise((done) => setTimeout(done, 0));

afterEach(() => vi.unstubAllGlobals());

describe('the screen', () => {
  it('is held, held again when the page comes back, and let go', async () => {
    const release = vi.fn(() => Promise.resolve());
    const { request, page } = device(() => Promise.resolve({ release }));
    const done = stayAwake();
    await settled();
    page.dispatchEvent(new Event('visibilitychange'));
    await settled();
    expect(request).toHaveBeenCalledTimes(2);
    done();
    page.dispatchEvent(new Event('visibilitychange'));
    await settled();
    expect(request).toHaveBeenCalledTimes(2);
    expect(release).toHaveBeenCalledOnce();
  });

  it('is let go when the device answers only after it is no longer wanted', async () => {
    const release = vi.fn(() => Promise.resolve());
    device(() => Promise.resolve({ release }));
    stayAwake()();
    await settled();
    expect(release).toHaveBeenCalledOnce();
  });

  it('is not asked for out of sight, and a refusal costs nothing', async () => {
    const { request, page } = device(() => Promise.reject(new Error('battery low')));
    page.visibilityState = 'hidden';
    const done = stayAwake();
    expect(request).not.toHaveBeenCalled();
    page.visibilityState = 'visible';
    page.dispatchEvent(new Event('visibilitychange'));
    await settled();
    expect(request).toHaveBeenCalledOnce();
    done();
  });

  it('goes to sleep by itself where a device has no such thing', () => {
    vi.stubGlobal('navigator', {});
    vi.stubGlobal('document', Object.assign(new EventTarget(), { visibilityState: 'visible' }));
    expect(() => stayAwake()()).not.toThrow();
  });
});
