// Taking papers in: one file after the other, so that each that is refused is told by name and stops none of the rest.

import { NOT_A_FILE, refusalOf, takeIn } from '../../door';
import type { FiledView, Refusal } from '../../door/types';

/** What was chosen, pasted or dropped. */
export interface Given {
  files: File[];
  /** The names of folders, of which nothing can be taken in. */
  folders: string[];
}

/** One thing that can be taken into the tray of a book. */
export interface Takable {
  name: string;
  take: (book: string) => Promise<FiledView>;
}

export class Intake {
  /** How many files there are in all; nothing while none is taken in. */
  total = $state(0);
  done = $state(0);
  /** How many papers the book had already. */
  known = $state(0);
  /** How many files were left out because the owner stopped. */
  left = $state(0);
  refused = $state.raw<{ name: string; refusal: Refusal }[]>([]);
  #queue: Takable[] = [];
  #stopping = false;

  /** Takes files into the tray of a book and gives the lines of their papers; files that come meanwhile go with the first. */
  async run(book: string, { files, folders }: Given): Promise<string[]> {
    const takables = files.map((file) => ({ name: file.name, take: (into: string) => takeIn(into, file) }));
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

  /** Stops after the file that is under way. */
  stop(): void {
    this.#stopping = true;
  }

  async #takeAll(book: string): Promise<string[]> {
    const taken: string[] = [];
    for (let next = this.#queue.shift(); next && !this.#stopping; next = this.#queue.shift()) {
      taken.push(...(await this.#take(book, next)));
      this.done += 1;
    }
    this.left = this.total - this.done;
    [this.#queue, this.total] = [[], 0];
    return taken;
  }

  async #take(book: string, { name, take }: Takable): Promise<string[]> {
    try {
      const { papers, warnings } = await take(book);
      this.known += warnings.filter((warning) => warning === 'paper-known').length;
      return papers;
    } catch (thrown) {
      this.#refuse(name, refusalOf(thrown));
      return [];
    }
  }

  #refuse(name: string, refusal: Refusal): void {
    this.refused = [...this.refused, { name, refusal }];
  }
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
