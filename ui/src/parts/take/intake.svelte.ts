// Taking papers in: one file after the other, so that each that is refused is told by name and stops none of the rest.

import { NOT_A_FILE, refusalOf, takeIn } from '../../door';
import type { Refusal } from '../../door/types';

/** What was chosen, pasted or dropped. */
export interface Given {
  files: File[];
  /** The names of folders, of which nothing can be taken in. */
  folders: string[];
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
  #queue: File[] = [];
  #stopping = false;

  /** Takes files into the tray of a book and gives the lines of their papers; files that come meanwhile go with the first. */
  async run(book: string, { files, folders }: Given): Promise<string[]> {
    if (files.length + folders.length === 0) return [];
    const running = this.total > 0;
    if (!running) [this.done, this.known, this.left, this.refused, this.#stopping] = [0, 0, 0, [], false];
    for (const name of folders) this.#refuse(name, { code: NOT_A_FILE, values: {}, can_keep: false });
    this.#queue.push(...files);
    this.total += files.length;
    return running || files.length === 0 ? [] : this.#takeAll(book);
  }

  /** Stops after the file that is under way. */
  stop(): void {
    this.#stopping = true;
  }

  async #takeAll(book: string): Promise<string[]> {
    const taken: string[] = [];
    for (let file = this.#queue.shift(); file && !this.#stopping; file = this.#queue.shift()) {
      taken.push(...(await this.#take(book, file)));
      this.done += 1;
    }
    this.left = this.total - this.done;
    [this.#queue, this.total] = [[], 0];
    return taken;
  }

  async #take(book: string, file: File): Promise<string[]> {
    try {
      const { papers, warnings } = await takeIn(book, file);
      this.known += warnings.filter((warning) => warning === 'paper-known').length;
      return papers;
    } catch (thrown) {
      this.#refuse(file.name, refusalOf(thrown));
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
