// A note on a part: what stands in the form, and what goes to the door.

import type { NumberForm, PartLine, PartNoteForm, StockView } from '../../../door/types';
import { hasWords, itemName } from '../../../format';

/** A part as far as something can be noted of it: one that was fitted, or one that waits at home. */
export type Notable = Pick<PartLine, 'maker' | 'numbers' | 'same' | 'warning' | 'note'>;

/** What waits at home, as far as something can be noted of it. */
export function notable({ part, same, warning, note }: StockView): Notable {
  return { maker: part.maker, numbers: part.number === '' ? [] : [part.number], same, warning, note };
}

/** What is known of a part, as a form takes it: a new note takes the place of the earlier one. */
export function noteOf({ maker, numbers, same, warning, note }: Notable): PartNoteForm {
  return {
    number: numbers[0] ?? '',
    maker,
    same: same.map((other) => ({ ...other })),
    mark: warning?.mark ?? '',
    instead: warning?.instead ?? '',
    note,
  };
}

/** The note without rows in which no number was written; nothing is asked for in place of a part that nothing warns of. */
export function noteToWrite(note: PartNoteForm): PartNoteForm {
  const same = note.same.filter(({ maker, number }: NumberForm) => (maker + number).trim() !== '');
  return { ...note, same, instead: note.mark === '' ? '' : note.instead };
}

/** What a part is called in the list: its maker and the number written last, or its name. */
export function titleOf({ maker, numbers, name }: PartLine): string {
  return [maker, numbers[0] ?? name].filter(Boolean).join(' ');
}

/** Whether a part has these words in its name, its maker, its numbers, or the names of what it served. */
export function partHas(part: PartLine, typed: string): boolean {
  const texts = [part.name, part.maker, ...part.numbers, ...part.same.map(({ number }) => number), ...part.items.map(itemName)];
  return texts.some((text) => hasWords(text, typed));
}
