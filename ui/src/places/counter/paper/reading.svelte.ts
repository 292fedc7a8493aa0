// A paper that is being read: it can be stopped, and what was read is offered for correction.

import { readPaper, refusalOf } from '../../../door';
import type { ReceiptView, Refusal } from '../../../door/types';
import { draftOf, type ReceiptDraft } from './receipt';

export class Reading {
  busy = $state(false);
  refusal = $state.raw<Refusal>();
  /** What was read, as it was. */
  read = $state.raw<ReceiptView>();
  /** The same, to be corrected. */
  draft = $state<ReceiptDraft>();
  #stopping: AbortController | undefined;

  /** Reads; nothing comes of it when it is stopped. */
  async start(book: string, paper: string): Promise<void> {
    const stopping = new AbortController();
    this.#stopping = stopping;
    [this.busy, this.refusal] = [true, undefined];
    try {
      const read = await readPaper(book, paper, stopping.signal);
      if (!stopping.signal.aborted) [this.draft, this.read] = [draftOf(read), read];
    } catch (thrown) {
      if (!stopping.signal.aborted) this.refusal = refusalOf(thrown);
    } finally {
      if (this.#stopping === stopping) this.busy = false;
    }
  }

  stop = (): void => {
    this.#stopping?.abort();
    this.busy = false;
  };

  /** Drops what was read: the picture on which it stood is another one now. */
  drop(): void {
    this.stop();
    [this.draft, this.read, this.refusal] = [undefined, undefined, undefined];
  }
}
