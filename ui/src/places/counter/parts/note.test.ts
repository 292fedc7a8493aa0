// A note on a part, out of the list and back to the door.

import { expect, it } from 'vitest';
import type { PartLine } from '../../../door/types';
import { noteOf, noteToWrite, partHas, titleOf } from './note';

const part: PartLine = {
  name: 'Oil filter',
  maker: 'Quarrel',
  numbers: ['QF 20-118', 'QF20118'],
  same: [{ maker: 'Merle', number: 'M 7' }],
  warning: { mark: 'superseded', instead: 'QF 20-119' },
  note: 'With its washer',
  kind: '',
  items: [{ of: 'own', name: 'Roof rail' }],
  quantity: '1',
  measure: 'piece',
  paid: null,
  times: 2,
  day: '2026-03-04',
  workshop: '',
  lasted: null,
  present: null,
};

it('starts with what is known, because it takes the place of the earlier note', () => {
  expect(noteOf(part)).toEqual({ number: 'QF 20-118', maker: 'Quarrel', same: part.same, mark: 'superseded', instead: 'QF 20-119', note: 'With its washer' });
  expect(noteOf({ ...part, warning: null, same: [] })).toMatchObject({ mark: '', instead: '', same: [] });
});

it('leaves out empty rows, and a number to ask for where nothing warns', () => {
  const note = { ...noteOf(part), mark: '', same: [{ maker: '', number: ' ' }, { maker: 'Merle', number: '' }] };
  expect(noteToWrite(note)).toMatchObject({ instead: '', same: [{ maker: 'Merle', number: '' }] });
});

it('is found by any of its numbers, and by what it served', () => {
  expect(['qf20', 'm 7', 'ROOF', 'filter'].map((typed) => partHas(part, typed))).toEqual([true, true, true, true]);
  expect(partHas(part, 'pump')).toBe(false);
});

it('is called by its number, or by its name where it has none', () => {
  expect([titleOf(part), titleOf({ ...part, numbers: [] })]).toEqual(['Quarrel QF 20-118', 'Quarrel Oil filter']);
});
