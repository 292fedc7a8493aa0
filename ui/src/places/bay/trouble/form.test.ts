// A trouble grows answer by answer, and what is written down is dated on the day it was typed.

import { describe, expect, it } from 'vitest';
import { asAsked, asWritten, emptyScan, emptyTrouble, foundLast, fromBook, hasTool, isTold, keptHere, NOTHING_HERE, troubleKey, withAnswer, withoutAnswer, withSymptom, withTool } from './form';

const TODAY = '2026-06-01';

describe('a trouble', () => {
  it('is told by words, a symptom or a scan, and by nothing else', () => {
    const empty = emptyTrouble();
    expect(isTold(empty)).toBe(false);
    expect(isTold({ ...empty, words: '  ', when: 'in the rain' })).toBe(false);
    expect(isTold({ ...empty, words: 'It whistles' })).toBe(true);
    expect(isTold(withSymptom(empty, 'rough-idle', 'symptoms'))).toBe(true);
    expect(isTold({ ...empty, scans: [{ ...emptyScan(), cleared: true }] })).toBe(true);
  });

  it('is asked about without the words, and keeps the place of every scan', () => {
    const form = { ...emptyTrouble(), words: 'It whistles', scans: [emptyScan(), { ...emptyScan(), text: 'P0171' }] };
    expect(asAsked(form)).toMatchObject({ words: '', scans: form.scans });
  });

  it('is written with its days, and without empty scans', () => {
    const form = { ...emptyTrouble(), scans: [emptyScan(), { ...emptyScan('2026-05-20'), text: 'P0171' }, { ...emptyScan(), text: 'P0300' }] };
    const written = asWritten(form, TODAY);
    expect(written.day).toBe(TODAY);
    expect(written.scans.map(({ day, text }) => [day, text])).toEqual([['2026-05-20', 'P0171'], [TODAY, 'P0300']]);
    expect(asWritten({ ...form, day: '2026-05-01' }, TODAY).day).toBe('2026-05-01');
    expect(fromBook({ ...written, scans: [] }).scans).toEqual([emptyScan()]);
    expect(fromBook(written)).toBe(written);
  });

  it('takes answers in the order in which they were given, and any of them back', () => {
    const once = withAnswer(emptyTrouble(), 'look-at-hoses', 'not-found');
    const twice = withAnswer(once, 'look-at-hoses', 'found');
    expect(twice.answers.map(({ answer }) => answer)).toEqual(['not-found', 'found']);
    expect(foundLast(twice)).toBe('look-at-hoses');
    expect(foundLast(once)).toBeUndefined();
    expect(withoutAnswer(twice, 1)).toEqual(once);
  });

  it('has a symptom that shows or that does not, and never both', () => {
    const shows = withSymptom(emptyTrouble(), 'rough-idle', 'symptoms');
    const absent = withSymptom(shows, 'rough-idle', 'absent');
    expect(absent).toMatchObject({ symptoms: [], absent: ['rough-idle'] });
    expect(withSymptom(absent, 'rough-idle', 'absent').absent).toEqual([]);
  });

  it('is kept apart from those that stand in the book', () => {
    expect(troubleKey('b', '')).not.toBe(troubleKey('b', '0190'));
  });
});

describe('tools', () => {
  const torch = { key: 'torch', usual: true };
  const camera = { key: 'camera', usual: false };

  it('that are usual are there until the owner says no, the others once he says yes', () => {
    expect(hasTool(torch, NOTHING_HERE)).toBe(true);
    expect(hasTool(camera, NOTHING_HERE)).toBe(false);
    const here = withTool(withTool(NOTHING_HERE, torch, false), camera, true);
    expect(here).toEqual({ at_night: false, owned: ['camera'], lacking: ['torch'] });
    expect(withTool(withTool(here, torch, true), camera, false)).toEqual(NOTHING_HERE);
  });

  it('are taken up from whatever the device kept, and the dark is asked anew', () => {
    expect(keptHere({ at_night: true, owned: ['camera', 3], lacking: 'torch' })).toEqual({ at_night: false, owned: ['camera'], lacking: [] });
    expect(keptHere(null)).toEqual(NOTHING_HERE);
  });
});
