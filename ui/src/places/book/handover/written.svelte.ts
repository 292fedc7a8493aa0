// The file that was written last for each book, as long as the page stands: its address may be asked for again.

import type { PackedView } from '../../../door/types';

class Written {
  #files = $state.raw<Record<string, PackedView>>({});

  of(book: string): PackedView | undefined {
    return this.#files[book];
  }

  note(book: string, file: PackedView): void {
    this.#files = { ...this.#files, [book]: file };
  }

  forget(book: string): void {
    this.#files = Object.fromEntries(Object.entries(this.#files).filter(([other]) => other !== book));
  }
}

export const written = new Written();
