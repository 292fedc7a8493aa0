// What was shared: asked about once, taken in whole, and what a book does not take waits on without being asked again.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

/** A core that holds what waits, as the window's does. */
class Core {
  waiting = ['1', '2'];
  /** What it throws instead of taking one in, and whether that one waits on. */
  refuses = new Map<string, { code: string; stays: boolean }>();
  /** Called when one is about to be taken in. */
  onTake = (_id: string): void => {};

  invoke = async (command: string, { id = '' }: { id?: string }): Promise<unknown> => {
    if (command === 'shared') return this.waiting.map((one) => ({ id: one, name: one === 'named' ? 'slip.jpg' : '' }));
    if (command === 'leave_shared') return void this.#drop(id);
    this.onTake(id);
    const refused = this.refuses.get(id);
    if (!refused?.stays) this.#drop(id);
    if (refused) throw { code: refused.code, values: {}, can_keep: false };
    return { answer: 'filed', papers: [id], warnings: [] };
  };

  #drop(id: string) {
    this.waiting = this.waiting.filter((one) => one !== id);
  }
}

async function opened(core = new Core()) {
  vi.stubGlobal('isTauri', true);
  vi.stubGlobal('window', { __TAURI_INTERNALS__: { invoke: core.invoke } });
  const { Shared } = await import('./shared.svelte');
  return { core, shared: new Shared() };
}

beforeEach(() => vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

describe('what was shared', () => {
  it('is new until it is taken in, and then filed', async () => {
    const { core, shared } = await opened();
    await shared.look();
    expect([shared.isNew, shared.waiting.length]).toEqual([true, 2]);
    await shared.take('b');
    expect([shared.isNew, shared.waiting, core.waiting]).toEqual([false, [], []]);
    expect(shared.filed).toEqual({ book: 'b', count: 2 });
  });

  it('is named when it is refused, by its number where nobody told its name', async () => {
    const { core, shared } = await opened();
    core.waiting = ['1', 'named', '3'];
    for (const id of ['1', 'named']) core.refuses.set(id, { code: 'not-an-image', stays: false });
    await shared.look();
    await shared.take('b');
    expect(shared.intake.refused.map(({ name, refusal }) => [name, refusal.code])).toEqual([
      ['Shared file 1', 'not-an-image'],
      ['slip.jpg', 'not-an-image'],
    ]);
    expect([shared.filed?.count, shared.waiting]).toEqual([1, []]);
  });

  it('waits on where the book does not take it, and is not brought up again by itself', async () => {
    const { core, shared } = await opened();
    core.refuses.set('2', { code: 'disk-full', stays: true });
    await shared.look();
    await shared.take('b');
    expect([shared.isNew, shared.waiting.map(({ id }) => id)]).toEqual([false, ['2']]);
    await shared.look();
    expect(shared.isNew).toBe(false);
    core.refuses.clear();
    await shared.take('b');
    expect([shared.waiting, shared.intake.refused]).toEqual([[], []]);
  });

  it('is new when it comes while others are taken in', async () => {
    const { core, shared } = await opened();
    core.onTake = (id) => {
      if (id === '2') core.waiting.push('3');
      void shared.look();
    };
    await shared.look();
    await shared.take('b');
    expect([shared.isNew, shared.waiting.map(({ id }) => id)]).toEqual([true, ['3']]);
  });

  it('waits when it is put off, and is gone when it is left out', async () => {
    const { core, shared } = await opened();
    await shared.look();
    shared.putOff();
    await shared.look();
    expect([shared.isNew, shared.waiting.length]).toEqual([false, 2]);
    await shared.leave();
    expect([core.waiting, shared.waiting, shared.filed]).toEqual([[], [], undefined]);
  });
});
