// A long list in stretches, of which only those near the screen are drawn.

/** Up to so many rows the whole list is drawn, so that the browser can search all of it. */
export const DRAWN_WHOLE = 300;

/** The rows in stretches of so many, the last one shorter. */
export function stretches<T>(rows: T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(rows.length / size) }, (_, index) => rows.slice(index * size, (index + 1) * size));
}

/** How many columns of this width fit side by side, one at least; all in pixels. */
export function columnsIn(room: number, width: number, gap: number): number {
  return Math.max(1, Math.floor((room + gap) / (width + gap)));
}
