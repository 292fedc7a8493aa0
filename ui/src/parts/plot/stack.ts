// Amounts of several sorts laid end to end in one bar, a bar a row.

import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { stack, stackOffsetDiverging } from 'd3-shape';

/** One bar: what it is called, and how much of each sort, in the order of the sorts. */
export interface Bar {
  name: string;
  amounts: number[];
}

/** A piece of a bar: which sort, and from where to where on the scale. */
export interface Piece {
  sort: number;
  from: number;
  to: number;
}

/** The pieces of each bar; what came back lies on the other side of nothing. */
export function piecesOf(bars: Bar[], sorts: number): Piece[][] {
  const laid = stack<Bar, number>()
    .keys(Array.from({ length: sorts }, (_, sort) => sort))
    .value(({ amounts }, sort) => amounts[sort] ?? 0)
    .offset(stackOffsetDiverging)(bars);
  return bars.map((_, row) =>
    laid.flatMap((series, sort) => {
      const [from = 0, to = 0] = series[row] ?? [];
      return from === to ? [] : [{ sort, from, to }];
    }),
  );
}

/** A scale on which all pieces lie, from nothing on, between two places in pixels. */
export function barScale(pieces: Piece[][], left: number, right: number): ScaleLinear<number, number> {
  const ends = pieces.flat().flatMap(({ from, to }) => [from, to]);
  const [least, most] = [Math.min(0, ...ends), Math.max(0, ...ends)];
  return scaleLinear().domain([least, most > least ? most : least + 1]).range([left, right]);
}
