// The screen stays lit while somebody works with both hands, where the device lets a page ask for that.

/** What is asked of a device; a page that was not served safely has no such thing. */
interface Waking {
  request(kind: 'screen'): Promise<{ release(): Promise<void> }>;
}

/**
 * Keeps the screen lit until the returned function is called. The device lets go whenever the page is out of sight, so
 * it is asked again when the page comes back. Never throws: a device that refuses goes to sleep, as it would anyway.
 */
export function stayAwake(): () => void {
  let wanted = true;
  let lock: { release(): Promise<void> } | undefined;

  async function hold() {
    if (document.visibilityState !== 'visible') return;
    const held = await waking()?.request('screen').catch(() => undefined);
    if (wanted) lock = held;
    else letGo(held);
  }

  const onshown = () => void hold();
  document.addEventListener('visibilitychange', onshown);
  void hold();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', onshown);
    letGo(lock);
  };
}

function letGo(lock: { release(): Promise<void> } | undefined): void {
  lock?.release().catch(() => undefined);
}

function waking(): Waking | undefined {
  return (globalThis.navigator as { wakeLock?: Waking } | undefined)?.wakeLock;
}
