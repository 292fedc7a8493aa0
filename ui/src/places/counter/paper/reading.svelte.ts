// A paper that is being read: it can be stopped, and what was read is offered for correction.

import { readPaper, refusalOf } from '../../../door';
import type { CheckedView, Refusal, RowView } from '../../../door/types';
import { draftOf, type ReceiptDraft } from './receipt';

export class Reading {
  busy = $state(false);
  refusal = $state.raw<Refusal>();
  draft = $state<ReceiptDraft>();
  checks = $state.raw<CheckedView[]>([]);
  rows = $state.raw<RowView[]>([]);
  #stopping: AbortController | undefined;

  /** Reads; nothing comes of it when it is stopped. */
  async start(book: string, paper: string): Promise<void> {
    const stopping = new AbortController();
    this.#stopping = stopping;
    [this.busy, this.refusal] = [true, undefined];
    try {
      const read = await readPaper(book, paper, stopping.signal);
      if (!stopping.signal.aborted) [this.draft, this.checks, this.rows] = [draftOf(read), read.checks, read.rows];
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
    [this.draft, this.checks, this.rows, this.refusal] = [undefined, [], [], undefined];
  }
}
