// One screen: one request, and the answer or the refusal that came back.

import { ask, refusalOf, type Answer } from './door';
import type { Refusal, Request } from './door/types';

export class Screen<R extends Request> {
  view = $state.raw<Answer<R['ask']>>();
  /** What the view in sight answers. */
  answered = $state.raw<R>();
  refusal = $state.raw<Refusal>();
  #latest = 0;

  constructor(private readonly request: () => R) {}

  /** Asks again. An answer that a later question has overtaken is dropped. */
  load = async (): Promise<void> => {
    const request = this.request();
    const turn = ++this.#latest;
    try {
      const view = await ask(request);
      if (turn === this.#latest) [this.view, this.answered, this.refusal] = [view, request, undefined];
    } catch (thrown) {
      if (turn === this.#latest) this.refusal = refusalOf(thrown);
    }
  };
}

/** One change on its way to the door: whether it is under way, and why it was refused. */
export class Change {
  busy = $state(false);
  refusal = $state.raw<Refusal>();
  /** The questions that were answered with 'keep it', as long as what they were about stands. */
  answered: string[] = [];

  /** Answers the question that is asked with 'keep it'. */
  keep() {
    if (this.refusal) this.answered.push(this.refusal.code);
  }

  /** Runs a change and gives what it returns; nothing when it was refused or another is under way. */
  async run<T>(work: () => Promise<T>): Promise<T | undefined> {
    if (this.busy) return undefined;
    this.busy = true;
    this.refusal = undefined;
    try {
      return await work();
    } catch (thrown) {
      this.refusal = refusalOf(thrown);
      return undefined;
    } finally {
      this.busy = false;
    }
  }

  /**
   * Runs a change and shows what came of it; whether both are done. A form that closes before that would open again on
   * what was before the change, and write it back.
   */
  async done(work: () => Promise<unknown>, show: () => Promise<void>): Promise<boolean> {
    const done = await this.run(async () => {
      await work();
      await show();
      return true;
    });
    return done === true;
  }
}
