// To which line of the book a paper belongs: those that fit what was read stand first.

import type { TieLine } from '../../../door/types';
import { day, itemNames, money } from '../../../format';
import type { FromPaper } from '../../../parts/from-paper';
import { say } from '../../../words';

/** The lines of the same day or of the same cost, and the others. */
export function sorted(lines: TieLine[], from: FromPaper | undefined): { fitting: TieLine[]; others: TieLine[] } {
  const fits = (line: TieLine) => from !== undefined && (sameDay(line, from) || sameCost(line, from));
  const both = (line: TieLine) => Number(from !== undefined && sameDay(line, from) && sameCost(line, from));
  const fitting = lines.filter(fits).sort((a, b) => both(b) - both(a));
  return { fitting, others: lines.filter((line) => !fits(line)) };
}

/** A line in a list of lines. */
export function tieText({ day: date, kind, items, place, cost }: TieLine): string {
  const what = kind === 'fill' ? say('tie-fill') : kind === 'bought' ? say('tie-bought') : itemNames(items);
  return [day(date), what, place, cost && money(cost)].filter(Boolean).join(', ');
}

function sameDay({ day: date }: TieLine, from: FromPaper): boolean {
  return from.day !== '' && date === from.day;
}

/** By the figures alone: a currency is often not printed. */
function sameCost({ cost }: TieLine, from: FromPaper): boolean {
  return cost !== null && from.cost !== '' && Number(cost.number) === Number(from.cost.replace(',', '.'));
}
