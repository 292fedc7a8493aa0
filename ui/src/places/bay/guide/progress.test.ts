// Cautions come before steps, steps before the last look, and what a phone kept is taken up whatever it holds.

import { describe, expect, it } from 'vitest';
import { countTicked, isBegun, nextStep, NOTHING_DONE, progressKey, resumedProgress, stageOf, toggledKey } from './progress';

const guide = {
  cautions: [{ key: 'jacking' }, { key: 'handbook' }],
  steps: [{ key: 'warm' }, { key: 'drain' }],
  look: [{ key: 'dry' }],
};
const read = ['jacking', 'handbook'];

describe('progress', () => {
  it('holds back the first step until every caution is acknowledged', () => {
    expect(stageOf(NOTHING_DONE, guide)).toBe('cautions');
    expect(stageOf({ ...NOTHING_DONE, acknowledged: ['handbook'], steps: ['warm', 'drain'], looks: ['dry'] }, guide)).toBe('cautions');
    expect(stageOf({ ...NOTHING_DONE, acknowledged: read }, guide)).toBe('steps');
  });

  it('goes on to the look and the end', () => {
    const worked = { acknowledged: read, steps: ['drain', 'warm'], looks: [] };
    expect(stageOf(worked, guide)).toBe('looks');
    expect(stageOf({ ...worked, looks: ['dry'] }, guide)).toBe('done');
  });

  it('asks for a step that was left out, and counts only what the guide has', () => {
    expect(nextStep(['drain', 'of an older version'], guide)).toBe('warm');
    expect(nextStep(['drain', 'warm'], guide)).toBeUndefined();
    expect(countTicked(['drain', 'of an older version'], guide.steps)).toBe(1);
  });

  it('is taken up from whatever the device kept', () => {
    const worked = { acknowledged: read, steps: ['warm'], looks: [] };
    expect(resumedProgress(JSON.parse(JSON.stringify({ ...worked, at: 5 })), 6)).toEqual(worked);
    for (const odd of [undefined, null, 7, 'x', [], { steps: 'warm' }, { looks: [1, null] }]) {
      expect(resumedProgress(odd, 6)).toEqual(NOTHING_DONE);
    }
  });

  it('keeps its ticks and asks for the cautions again on another day', () => {
    const worked = { acknowledged: read, steps: ['warm'], looks: [], at: 0 };
    const [hour, day] = [3_600_000, 24 * 3_600_000];
    expect(resumedProgress(worked, hour).acknowledged).toEqual(read);
    expect(resumedProgress(worked, day)).toEqual({ acknowledged: [], steps: ['warm'], looks: [] });
    expect(resumedProgress({ ...worked, at: 3 * day }, 0).acknowledged).toEqual([]);
  });

  it('is kept apart by car and guide, and only once begun', () => {
    expect(progressKey('b', 'oil')).not.toBe(progressKey('c', 'oil'));
    expect(isBegun(NOTHING_DONE)).toBe(false);
    expect(isBegun({ ...NOTHING_DONE, steps: ['warm'] })).toBe(true);
  });

  it('ticks and takes a tick back', () => {
    expect(toggledKey(['warm'], 'drain')).toEqual(['warm', 'drain']);
    expect(toggledKey(['warm', 'drain'], 'warm')).toEqual(['drain']);
  });
});
