// An address leads back to what it was written for.

import { describe, expect, it } from 'vitest';
import { bayWay, briefAddress, guideAddress, troubleAddress } from './bay';
import { paperAddress } from './from-paper';
import { itemAddress } from './visit/lib';

describe('the ways into the bay', () => {
  it('lead to a trouble, its brief and a guide', () => {
    expect(bayWay(troubleAddress())).toEqual({ to: 'trouble', subject: '' });
    expect(bayWay(troubleAddress('0190'))).toEqual({ to: 'trouble', subject: '0190' });
    expect(bayWay(briefAddress('0190'))).toEqual({ to: 'brief', subject: '0190' });
    expect(bayWay(guideAddress('oil-and-filter'))).toEqual({ to: 'guide', key: 'oil-and-filter' });
  });

  it('leave the addresses of jobs and papers to the work', () => {
    const others = ['', itemAddress({ of: 'own', name: 'guide to the roof rail' }), itemAddress({ of: 'catalogue', number: 1, key: 'x' }), paperAddress('7')];
    for (const past of others) expect(bayWay(past)).toEqual({ to: 'work', past });
    expect(bayWay('guide')).toEqual({ to: 'work', past: 'guide' });
    expect(bayWay('brief')).toEqual({ to: 'work', past: 'brief' });
  });
});
