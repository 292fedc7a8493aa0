// Taking papers in: one file after the other, so that each that is refused is told by name and stops none of the rest.
// The owner can stop at any moment, also within a file, of which nothing is kept then.

import { INTAKE_STOPPED, intakeProgress, NOT_A_FILE, refusalOf, stopIntake, takeIn } from '../../door';
import type { FiledView, Refusal } from '../../door/types';

/** What was chosen, pasted or dropped. */
export interface Given {
  files: File[];
  /** The names of folders, of which nothing can be taken in. */
  folders: string[];
}

/** One thing that can be taken into the tray of a book, under a ticket by which it can be asked how far it is and be stopped. */
export interface Takable {
  name: string;
  take: (book: string, ticket: string) => Promise<FiledView>;
}

/** How often it is asked how far a file is, in milliseconds. */
const LOOK = 250;

export class Intake {
  /** How many files there are in all; nothing while none is taken in. */
  total = $state(0);
  done = $state(0);
  /** How much of the file that is under way is done, from 0 to 1. */
  part = $state(0);
  /** How many papers the book had already. */
  known = $state(0);
  /** How many files were left out because the owner stopped. */
  left = $state(0);
  refused = $state.raw<{ name: string; refusal: Refusal }[]>([]);
  #queue: Takable[] = [];
  #stopping = false;
  /** The ticket of the file that is under way; empty while there is none. */
  #ticket = '';

  /** Takes files into the tray of a book and gives the lines of their papers; files that come meanwhile go with the first. */
  async run(book: string, { files, folders }: Given): Promise<string[]> {
    const takables = files.map((file) => ({ name: file.name, take: (into: string, ticket: string) => takeIn(into, file, ticket) }));
    return this.take(book, takables, folders);
  }

  /** The same with whatever can be taken in. */
  async take(book: string, takables: Takable[], folders: string[] = []): Promise<string[]> {
    if (takables.length + folders.length === 0) return [];
    const running = this.total > 0;
    if (!running) this.clear();
    for (const name of folders) this.#refuse(name, { code: NOT_A_FILE, values: {}, can_keep: false });
    this.#queue.push(...takables);
    this.total += takables.length;
    return running || takables.length === 0 ? [] : this.#takeAll(book);
  }

  /** Forgets what came of the last time. */
  clear(): void {
    [this.done, this.known, this.left, this.refused, this.#stopping] = [0, 0, 0, [], false];
  }

  /** Stops, also within the file that is under way, unless that is filed already. */
  stop(): void {
    this.#stopping = true;
    // Where the core does not hear of it, the file that is under way is taken in, and none after it.
    if (this.#ticket !== '') stopIntake(this.#ticket).catch(() => undefined);
  }

  async #takeAll(book: string): Promise<string[]> {
    const taken: string[] = [];
    for (let next = this.#queue.shift(); next && !this.#stopping; next = this.#queue.shift()) {
      const papers = await this.#take(book, next);
      if (papers === undefined) break;
      taken.push(...papers);
      this.done += 1;
    }
    this.left = this.total - this.done;
    [this.#queue, this.total] = [[], 0];
    return taken;
  }

  /** The papers of a file; nothing when it was stopped on its way. */
  async #take(book: string, { name, take }: Takable): Promise<string[] | undefined> {
    const ticket = newTicket();
    [this.#ticket, this.part] = [ticket, 0];
    const looking = setInterval(() => void this.#look(ticket), LOOK);
    try {
      const { papers, warnings } = await take(book, ticket);
      this.known += warnings.filter((warning) => warning === 'paper-known').length;
      return papers;
    } catch (thrown) {
      const refusal = refusalOf(thrown);
      if (refusal.code === INTAKE_STOPPED) return undefined;
      this.#refuse(name, refusal);
      return [];
    } finally {
      clearInterval(looking);
      [this.#ticket, this.part] = ['', 0];
    }
  }

  async #look(ticket: string): Promise<void> {
    // A look that fails tells nothing, and the next one may.
    const progress = await intakeProgress(ticket).catch(() => null);
    if (progress && progress.of > 0 && this.#ticket === ticket) this.part = progress.done / progress.of;
  }

  #refuse(name: string, refusal: Refusal): void {
    this.refused = [...this.refused, { name, refusal }];
  }
}

/** A name for one intake that no other has; a page that is no secure context has no `randomUUID`. */
function newTicket(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** What a drop or a paste brought; text and pictures of other pages are no files. */
export function givenBy(transfer: DataTransfer | null): Given {
  const items = [...(transfer?.items ?? [])].filter(({ kind }) => kind === 'file');
  const given: Given = { files: [], folders: [] };
  for (const item of items) {
    const entry = item.webkitGetAsEntry?.() ?? null;
    const file = item.getAsFile();
    if (entry?.isDirectory) given.folders.push(entry.name);
    else if (file) given.files.push(file);
  }
  return given;
}
