// Corners that are moved stay on the photo, and each moves alone.

import { expect, it } from 'vitest';
import { moved, START, stepped } from './corners';

it('moves one corner and leaves the others', () => {
  const corners = moved(START, 2, [0.5, 0.6]);
  expect(corners[2]).toEqual([0.5, 0.6]);
  expect([corners[0], corners[1], corners[3]]).toEqual([START[0], START[1], START[3]]);
});

it('moves none beyond the photo', () => {
  expect(moved(START, 0, [-0.2, 1.4])[0]).toEqual([0, 1]);
});

it('moves by arrow keys, further with shift, and by no other key', () => {
  const [fine] = stepped(START, 0, 'ArrowRight', false) ?? START;
  const [coarse] = stepped(START, 0, 'ArrowRight', true) ?? START;
  expect(fine[0]).toBeGreaterThan(START[0][0]);
  expect(coarse[0]).toBeGreaterThan(fine[0]);
  expect(fine[1]).toBe(START[0][1]);
  expect(stepped(START, 3, 'ArrowUp', false)?.[3][1]).toBeLessThan(START[3][1]);
  expect(stepped(START, 0, 'Enter', false)).toBeUndefined();
});
