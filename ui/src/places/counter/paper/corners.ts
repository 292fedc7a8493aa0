// The four corners of a paper on its photo, as they are dragged or moved by the arrow keys.

import type { Corner, Corners } from '../../../door';

/** Their names, clockwise from the paper's upper left. */
export const CORNERS = ['upper-left', 'upper-right', 'lower-right', 'lower-left'] as const;

/** Where they stand before anybody has moved one, if they were not found: a little inside the photo. */
export const START: Corners = [
  [0.06, 0.05],
  [0.94, 0.05],
  [0.94, 0.95],
  [0.06, 0.95],
];

/** One stroke of an arrow key, in shares of the photo, and one with the shift key held. */
const STEP = { fine: 0.004, coarse: 0.04 };

const DIRECTIONS: Readonly<Record<string, Corner>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The corners with one of them elsewhere, never beyond the photo. */
export function moved(corners: Corners, index: number, [x, y]: Corner): Corners {
  return corners.map((corner, at) => (at === index ? [within(x), within(y)] : corner)) as Corners;
}

/** The corners after a stroke of a key; nothing when the key moves none. */
export function stepped(corners: Corners, index: number, key: string, coarse: boolean): Corners | undefined {
  const [direction, corner] = [DIRECTIONS[key], corners[index]];
  if (!direction || !corner) return undefined;
  const step = coarse ? STEP.coarse : STEP.fine;
  return moved(corners, index, [corner[0] + direction[0] * step, corner[1] + direction[1] * step]);
}

function within(share: number): number {
  return Math.min(1, Math.max(0, share));
}
