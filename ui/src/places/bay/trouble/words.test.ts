// Chances in round numbers, lamps before all else, and a sentence for every reason.

import { describe, expect, it } from 'vitest';
import type { Because, ItemView, TroubleLine } from '../../../door/types';
import { troubleText } from '../../../parts/trouble';
import { chanceText, checkName, checkTime, opensText, reasonText, stopText, symptomGroups, toolsText } from './words';

const oil: ItemView = { of: 'catalogue', number: 1, key: 'engine-oil' };
const cause = 'vacuum-leak';
const symptoms = [
  { key: 'rough-idle', about: 'running', danger: null },
  { key: 'oil-lamp', about: 'lamps', danger: 'oil-pressure' },
  { key: 'engine-lamp', about: 'lamps', danger: null },
];

describe('symptoms', () => {
  it('come under their headings, the lamps first', () => {
    const groups = symptomGroups(symptoms, '');
    expect(groups.map(({ about }) => about)).toEqual(['lamps', 'running']);
    expect(groups[0]?.symptoms).toHaveLength(2);
  });

  it('are found by a part of their name', () => {
    expect(symptomGroups(symptoms, ' IDLE ').map(({ about }) => about)).toEqual(['running']);
    expect(symptomGroups(symptoms, 'of no such name')).toEqual([]);
  });
});

describe('numbers', () => {
  it('of chance are round, and neither nought nor all', () => {
    expect(chanceText(347)).toBe('about 35\u00a0%');
    expect(chanceText(24)).toBe('less than 5\u00a0%');
    expect(chanceText(0)).toBe('less than 5\u00a0%');
    expect(chanceText(985)).toBe('more than 95\u00a0%');
    expect(chanceText(950)).toBe('about 95\u00a0%');
  });

  it('of time are to the minute while that counts', () => {
    expect(checkTime(3)).toBe('3 min');
    expect(checkTime(95)).toBe('1 h 40 min');
  });
});

describe('a check', () => {
  it('says what is opened, and what is open already', () => {
    const opens = [{ word: 'access-bonnet', newly: false }, { word: 'access-air-path', newly: true }];
    expect(opensText({ opens })).toContain('bonnet open (already)');
    expect(opensText({ opens })).toContain('air intake open');
    expect(opensText({ opens: [] })).toBe('');
  });

  it('marks the tools that are lacking', () => {
    const tools = [{ tool: 'torch', lacking: false }, { tool: 'camera', lacking: true }];
    expect(toolsText({ tools })).toBe('Torch · Inspection camera (you lack it)');
  });

  it('has a sentence for every reason that names what it is about', () => {
    const reasons: [Because, string][] = [
      [{ because: 'looks-for', cause }, 'Air leaking in'],
      [{ because: 'symptom', symptom: 'rough-idle', cause }, 'Rough idle'],
      [{ because: 'code', code: 'P0171', cause }, 'P0171'],
      [{ because: 'overdue', item: oil, cause }, 'overdue'],
      [{ because: 'touched', item: oil, days: 1, cause }, 'yesterday'],
      [{ because: 'before', cause }, 'before'],
      [{ because: 'shares', word: 'access-bonnet' }, 'bonnet open'],
      [{ because: 'second-look' }, 'overlooked'],
    ];
    for (const [why, told] of reasons) expect(reasonText(why)).toContain(told);
    expect(checkName('of a newer version')).toBe('of a newer version');
  });
});

it('says what to do now at a danger, also at one that only a newer version knows', () => {
  const overheats = { is: 'symptom', symptom: 'overheats' } as const;
  expect(stopText({ danger: 'overheating', urgency: 'stop', sign: overheats }).now).toContain('Do not open the cap');
  expect(stopText({ danger: 'of a newer version', urgency: 'stop', sign: overheats }).now).toMatch(/handbook/);
  expect(stopText({ danger: 'oil-pressure', urgency: 'stop', sign: { is: 'code', code: 'P0524' } }).shows).toContain('P0524');
});

it('tells a trouble by the words, else by what was ticked, else by the codes', () => {
  const line: TroubleLine = { subject: '1', day: '2026-06-01', words: 'It whistles\nwhen cold', symptoms: ['rough-idle'], codes: ['P0171'], end: null };
  expect(troubleText(line)).toBe('It whistles');
  expect(troubleText({ ...line, words: ' ' })).toBe('Rough idle');
  expect(troubleText({ ...line, words: '', symptoms: [] })).toBe('P0171');
});
