// What was shared with the program, as long as it waits, and what came of it.

import { leaveShared, sharedPapers, takeShared, type SharedPaper } from '../../door';
import { say } from '../../words';
import { Intake } from '../take/intake.svelte';

export class Shared {
  readonly intake = new Intake();
  waiting = $state.raw<SharedPaper[]>([]);
  /** Whether something waits about which nobody was asked yet. */
  isNew = $state(false);
  /** What was filed last. Another object each time, so that a place can see that it has to ask again. */
  filed = $state.raw<{ book: string; count: number }>();
  /** What its owner knows of: it is not brought up again by itself. */
  #known = new Set<string>();

  /** Looks what waits. What comes while papers are taken in is found when that is done. */
  look = async (): Promise<void> => {
    if (this.intake.total > 0) return;
    // Where the core does not answer, every other question on the page says so.
    this.waiting = await sharedPapers().catch(() => []);
    if (this.waiting.some(({ id }) => !this.#known.has(id))) this.isNew = true;
  };

  /** Takes everything that waits into the tray of a book. */
  async take(book: string): Promise<void> {
    if (this.intake.total > 0) return;
    this.putOff();
    this.filed = undefined;
    const takables = this.waiting.map(({ id, name }, index) => ({
      name: name || say('shared-nth', { number: index + 1 }),
      take: (into: string, ticket: string) => takeShared(into, id, ticket),
    }));
    const papers = await this.intake.take(book, takables);
    if (papers.length > 0) this.filed = { book, count: papers.length };
    await this.look();
  }

  /** Leaves everything that waits out, for good. */
  async leave(): Promise<void> {
    this.putOff();
    try {
      for (const { id } of this.waiting) await leaveShared(id);
    } finally {
      await this.look();
    }
  }

  /** Lets what waits wait. */
  putOff(): void {
    for (const { id } of this.waiting) this.#known.add(id);
    this.isNew = false;
  }

  /** Forgets what came of the last papers. */
  close(): void {
    this.filed = undefined;
    this.intake.clear();
  }
}

export const shared = new Shared();
