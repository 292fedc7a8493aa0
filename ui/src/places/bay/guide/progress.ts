// Where somebody stands in a guide. It is kept on the device, so that a phone may sleep between two steps.

/** What was acknowledged and ticked, by the keys of cautions, steps and looks. */
export interface Progress {
  acknowledged: string[];
  steps: string[];
  looks: string[];
}

/** What a guide asks to be ticked; a key that it no longer has counts for nothing. */
export interface ToTick {
  cautions: { key: string }[];
  steps: { key: string }[];
  look: { key: string }[];
}

/** What comes next: cautions before any step, steps before the last look. */
export type Stage = 'cautions' | 'steps' | 'looks' | 'done';

export const NOTHING_DONE: Progress = { acknowledged: [], steps: [], looks: [] };

/** By this name the device keeps the progress. */
export function progressKey(book: string, guide: string): string {
  return `guide.${book}.${guide}`;
}

/** What is kept of it, and when. */
export interface KeptProgress extends Progress {
  /** Milliseconds since 1970. */
  at: number;
}

/** For so long a caution that was acknowledged counts as read: a day's work, and not the next one's. */
const CAUTIONS_HOLD_MS = 18 * 3_600_000;

/**
 * What was kept, whatever shape it is in: what is no list of keys is begun anew. Ticked steps stay ticked; cautions that
 * were acknowledged too long ago are read again. `now` is in milliseconds since 1970.
 */
export function resumedProgress(kept: unknown, now: number): Progress {
  const from = (typeof kept === 'object' && kept !== null ? kept : {}) as Partial<Record<keyof KeptProgress, unknown>>;
  const keys = (value: unknown) => (Array.isArray(value) ? value.filter((key): key is string => typeof key === 'string') : []);
  const fresh = typeof from.at === 'number' && Math.abs(now - from.at) < CAUTIONS_HOLD_MS;
  return { acknowledged: fresh ? keys(from.acknowledged) : [], steps: keys(from.steps), looks: keys(from.looks) };
}

export function stageOf({ acknowledged, steps, looks }: Progress, guide: ToTick): Stage {
  if (guide.cautions.some(({ key }) => !acknowledged.includes(key))) return 'cautions';
  if (nextStep(steps, guide) !== undefined) return 'steps';
  return guide.look.some(({ key }) => !looks.includes(key)) ? 'looks' : 'done';
}

/** The first step that is not ticked; nothing when all are. */
export function nextStep(ticked: string[], { steps }: Pick<ToTick, 'steps'>): string | undefined {
  return steps.find(({ key }) => !ticked.includes(key))?.key;
}

/** How many of these are ticked. */
export function countTicked(ticked: string[], all: { key: string }[]): number {
  return all.filter(({ key }) => ticked.includes(key)).length;
}

/** The keys with this one added, or without it when it was among them. */
export function toggledKey(keys: string[], key: string): string[] {
  return keys.includes(key) ? keys.filter((other) => other !== key) : [...keys, key];
}

/** Whether anything was ticked at all, so that it is worth keeping. */
export function isBegun({ acknowledged, steps, looks }: Progress): boolean {
  return acknowledged.length + steps.length + looks.length > 0;
}
