// A part number as the bars of Code 128 (ISO/IEC 15417), which the scanner at the counter reads off the screen.

import { CODE128 } from 'jsbarcode/bin/barcodes/CODE128/index.js';

/** The margin on either side without which a scanner does not find the bars, in modules: ten by ISO/IEC 15417. */
export const QUIET = 10;
/** More characters than this make bars too thin for the width of a phone. */
const MOST = 24;

/** A bar, in modules from the left edge of the symbol, quiet zone included. */
export interface Bar {
  from: number;
  width: number;
}

export interface Bars {
  bars: Bar[];
  /** The width of the whole symbol with both quiet zones, in modules. */
  width: number;
}

/** The bars of a number; nothing when it is too long, or has a letter that is not ASCII. */
export function barsOf(number: string): Bars | undefined {
  const text = number.trim();
  if (text.length > MOST || !/^[\x20-\x7e]+$/.test(text)) return undefined;
  const modules = new CODE128(text, {}).encode().data;
  const bars = [...modules.matchAll(/1+/g)].map(({ index, 0: bar }) => ({ from: index + QUIET, width: bar.length }));
  return { bars, width: modules.length + 2 * QUIET };
}

/** The width in pixels at which every module is a whole number of the screen's dots, so that no bar is blurred. */
export function sharpWidth(modules: number, room: number, dotsPerPixel: number): number {
  const dots = Math.max(1, Math.floor((room * dotsPerPixel) / modules));
  return (dots * modules) / dotsPerPixel;
}
