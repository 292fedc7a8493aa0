// A code is taken apart, the lists stay apart, and cleared is never told as mended.
// Source of the codes and of what their signs stand for: SAE J2012 as the rules' own tests name it.

import { describe, expect, it } from 'vitest';
import type { CodeLife, CodeView, ReadinessView } from '../../../door/types';
import { codeGroups, codeParts, codeText, emptyLists, lifeTexts, meaningText, noteText, readinessText, seenText, tests, toldText, warnsOfClearing } from './codes';

const lean: CodeView = {
  code: 'P0171',
  meaning: 'code-P0171',
  system: 'powertrain',
  origin: 'standard',
  area: 'mixture',
  urgency: 'watch',
  status: 'pending',
  failure_type: null,
  causes: ['vacuum-leak'],
  life: null,
};
const makers: CodeView = { ...lean, code: 'P13FA', meaning: null, origin: 'maker', area: null, status: 'confirmed', causes: [] };

describe('codes', () => {
  it('are kept apart by how sure the car is, the surest first', () => {
    expect(codeGroups([lean, makers, { ...lean, status: 'of a newer version' }]).map(({ status }) => status)).toEqual(['confirmed', 'pending', 'of a newer version']);
    expect(codeGroups([])).toEqual([]);
    expect(emptyLists({ answered: ['confirmed', 'pending'], codes: [lean] })).toEqual(['confirmed']);
  });

  it('are taken apart sign by sign, and a hint stands only where there is one', () => {
    expect(codeParts(lean).map(({ sign }) => sign)).toEqual(['P', '0', '1', '71']);
    expect(codeParts(makers).map(({ sign }) => sign)).toEqual(['P', '1', '3FA']);
    expect(codeParts(lean)[2]?.stands).toContain('fuel and air');
  });

  it('say what they mean, or honestly that there is no text', () => {
    expect(meaningText(lean).length).toBeGreaterThan(5);
    expect(meaningText(lean)).not.toBe(meaningText(makers));
    expect(meaningText(makers)).toContain('handbook');
    expect(codeText({ code: 'P0171', failure_type: '85' })).toBe('P0171-85');
  });

  it('come with what could not be read, and with what was frozen', () => {
    expect(noteText({ key: 'not-a-code', values: { text: 'P4' } })).toContain('P4');
    expect(noteText({ key: 'of a newer version', values: {} })).not.toBe('');
    expect(toldText({ key: 'engine-speed', value: '812', unit: 'rpm' })).toBe('Engine speed: 812\u00a0rpm');
  });

  it('warn of clearing as soon as there is something to clear, and afterwards', () => {
    expect(warnsOfClearing({ codes: [], notes: [] }, false)).toBe(false);
    expect(warnsOfClearing({ codes: [], notes: [] }, true)).toBe(true);
    expect(warnsOfClearing({ codes: [lean], notes: [] }, false)).toBe(true);
    expect(warnsOfClearing({ codes: [], notes: [{ key: 'cleared', values: {} }] }, false)).toBe(true);
  });
});

describe("the car's own tests", () => {
  const view: ReadinessView = { lamp: true, codes: 3, ignition: 'spark', complete: false, allowed: null, monitors: [{ key: 'misfire', finished: true }, { key: 'catalyst', finished: false }] };

  it('are told by name, finished or not', () => {
    expect(tests(view)).toEqual({ finished: ['Misfire'], open: ['Catalytic converter'] });
    expect(readinessText(view)).toContain('Catalytic converter');
    expect(readinessText({ ...view, allowed: 1 })).toContain('one unfinished test');
    expect(readinessText({ ...view, complete: true, monitors: [{ key: 'misfire', finished: true }] })).not.toContain('not');
  });
});

describe('the life of a code', () => {
  const at = (on: string, count: number) => ({ day: on, reading: { count, unit: 'km' as const } });
  const life: CodeLife = {
    first: at('2026-01-05', 90000),
    last: at('2026-03-01', 92000),
    times: 2,
    cleared: at('2026-01-06', 90010),
    turns: [],
    returns: [{ left: at('2026-01-06', 90010), was_cleared: true, back: at('2026-03-01', 92000), after: { days: 54, distance: { count: 1990, unit: 'km' } } }],
    standing: 'cleared',
    since: at('2026-03-02', 92010),
    warnings: ['not-mended', 'readiness-lost'],
  };

  it('tells when it was seen, after how far it came back, and that cleared is not mended', () => {
    const told = lifeTexts(life).join(' ');
    expect(told).toContain('90\u00a0000\u00a0km');
    expect(told).toContain('1\u00a0990\u00a0km');
    expect(told).toContain('Cleared is not mended');
    expect(lifeTexts({ ...life, times: 1, returns: [], turns: [], since: null, warnings: [] })).toHaveLength(2);
    expect(seenText({ day: '2026-01-05', reading: null })).toBe('5\u00a0Jan\u00a02026');
  });
});
