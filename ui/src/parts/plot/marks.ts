// The numbered marks above a plot: those that stand too close to be read share one badge.

/** One mark. */
export interface Mark {
  /** By this number it stands in the list below the plot. */
  number: number;
  time: number;
}

/** One badge, which may stand for several marks. */
export interface Badge {
  at: number;
  words: string;
  /** Where a line goes down through the plot, one for each mark. */
  threads: number[];
}

/** The badges of these marks; `widthOf` says how wide the badge of these words is, with its distance to the next. */
export function badgesOf(marks: Mark[], place: (time: number) => number, widthOf: (words: string) => number): Badge[] {
  const groups: Mark[][] = [];
  for (const mark of [...marks].sort((a, b) => a.time - b.time)) {
    groups.push([mark]);
    while (lastTwoTouch(groups, place, widthOf)) groups.push([...groups.splice(-2).flat()]);
  }
  return groups.map((group) => badgeOf(group, place));
}

function lastTwoTouch(groups: Mark[][], place: (time: number) => number, widthOf: (words: string) => number): boolean {
  const [left, right] = groups.slice(-2).map((group) => badgeOf(group, place));
  return left !== undefined && right !== undefined && right.at - left.at < (widthOf(left.words) + widthOf(right.words)) / 2;
}

function badgeOf(group: Mark[], place: (time: number) => number): Badge {
  const threads = group.map(({ time }) => place(time));
  const numbers = group.map(({ number }) => number);
  const [least, most] = [Math.min(...numbers), Math.max(...numbers)];
  return {
    at: threads.reduce((sum, thread) => sum + thread, 0) / threads.length,
    words: least === most ? String(least) : `${least}–${most}`,
    threads,
  };
}
