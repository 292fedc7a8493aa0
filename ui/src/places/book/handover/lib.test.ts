// What the comparison of an old card with the book says, and which differences speak against it.

import { describe, expect, it } from 'vitest';
import type { CompareView, DifferenceView } from '../../../door/types';
import { comparedText, differenceText, visitText } from './lib';

const CARD = {
  signed: '2018-06-01',
  fingerprint: '12ab 34cd 56ef 7890',
  name: 'Thistle',
  reading: { day: '2018-06-01', reading: { count: 71000, unit: 'km' as const } },
  visits: 3,
  key_known: true,
};

const FOUND: CompareView = {
  against: 'book',
  contains: true,
  car_known: true,
  old: CARD,
  new: null,
  moment: { state: 'found', entries: 1206, newest: '2018-06-01', late: 0, since: 4 },
  same: 3,
  left_out: 0,
  differences: [],
};

const DIFFERENCE: DifferenceView = { kind: 'missing', breach: true, day: '2017-05-02', then: null, now: null, reading_then: null, reading_now: null, was: '', is: '' };

describe('an old card', () => {
  it('that holds is told with what stood in the book then', () => {
    const told = comparedText(FOUND);
    expect(told).toHaveLength(2);
    expect(told[0]).toMatch(/1.206 entries, the newest of 1.Jun.2018/);
    expect(told[0]).toContain('4 were written since');
    expect(told[1]).toContain('has written in this book');
  });

  it('of another key, another book and an uncertain car says each of the three', () => {
    const moment = { state: 'not-found', entries: 0, newest: '', late: 0, since: 0 };
    const told = comparedText({ ...FOUND, contains: false, car_known: false, old: { ...CARD, key_known: false }, moment });
    expect(told[0]).toContain('never was what the card vouches for');
    expect(told[1]).toContain('has written nothing in this book');
    expect(told[2]).toContain('not certain');
  });

  it('says how many entries came in late', () => {
    const moment = { state: 'found', entries: 6, newest: '2018-06-01', late: 1, since: 0 };
    expect(comparedText({ ...FOUND, moment })[1]).toMatch(/^One entry bears/);
  });
});

describe('a difference', () => {
  it('names its day or its reading', () => {
    expect(differenceText(DIFFERENCE)).toMatch(/^A visit of 2.May.2017 is not in the book/);
    const reading_then = { day: '2018-06-01', reading: { count: 71000, unit: 'km' as const } };
    expect(differenceText({ ...DIFFERENCE, kind: 'latest-reading', reading_then })).toMatch(/71.000.km/);
    expect(differenceText({ ...DIFFERENCE, kind: 'first-use', was: '2009-05-04', is: '2011-05-04' })).toMatch(/4.May.2009.*4.May.2011/);
    expect(differenceText({ ...DIFFERENCE, kind: 'of-a-later-version' })).toBe('of-a-later-version');
  });

  it('tells a visit in one breath', () => {
    const visit = { day: '2017-05-02', reading: { count: 56000, unit: 'km' as const }, items: [{ of: 'own' as const, name: 'roof hinge' }], marks: [] };
    expect(visitText(visit)).toMatch(/2.May.2017.· 56.000.km.· roof hinge/);
  });
});
