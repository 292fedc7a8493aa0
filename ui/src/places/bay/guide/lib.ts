// A guide: which job it is for, what it says by key, and what it hands to the visit.

import type { GuideLine, GuideView } from '../../../door/types';
import { itemName } from '../../../format';
import type { WorkDone } from '../../../parts/bay';
import { itemForm, partAgain } from '../../../parts/visit/lib';
import { sayKey } from '../../../words';

export type GuidePart = 'not' | 'step' | 'look' | 'after';

/** What a part of a guide says; a key alone where a newer version knows more than the words here. */
export function guideText(guide: string, part: GuidePart, key: string): string {
  return sayKey(`guide-${guide}-${part}-${key}`) ?? key;
}

/** What is asked to be ticked, as lists of keys. */
export function toTick({ cautions, steps, look }: Pick<GuideView, 'cautions' | 'steps' | 'look'>) {
  return { cautions, steps, look: look.map((key) => ({ key })) };
}

/** What the visit form starts with once the work is done. */
export function workOf({ guide, parts }: Pick<GuideView, 'guide' | 'parts'>): WorkDone {
  return { items: guide.does.map(itemForm), looked: guide.finds.map(itemForm), parts: parts.map(partAgain), by: 'owner' };
}

/** What may be written into the book with this job, by name. */
export function writes({ does, finds }: GuideLine): string[] {
  return (does.length > 0 ? does : finds).map(itemName);
}
