// Cautions before work, and the way through the bay.

import { describe, expect, it } from 'vitest';
import type { BayView, JobView } from '../../door/types';
import { nothingRead } from '../../parts/from-paper';
import { emptyPart } from '../../parts/visit/lib';
import { cautionsFor, chosenJobs, freshDraft, groupJobs, offeredParts, paperDraft, pastDraft, resumed, stepAfterChoosing, visitToRecord, withFitted, withWork } from './lib';

const oil: JobView = {
  item: { of: 'catalogue', number: 1, key: 'engine-oil' },
  state: 'overdue',
  workshop: false,
  cautions: ['used-fluids', 'hot-engine', 'jacking'],
  parts: [{ name: '', maker: 'Quarrel', number: 'Q5', quantity: '1', measure: 'piece', price: { number: '9', currency: 'EUR' }, served: null, kind: '' }],
  minutes: 40,
  in_next_visit: true,
  guide: 'oil-and-filter',
};
const belt: JobView = {
  item: { of: 'catalogue', number: 12, key: 'timing-belt' },
  state: 'ahead',
  workshop: true,
  cautions: ['jacking', 'moving-parts'],
  parts: [],
  minutes: 240,
  in_next_visit: false,
  guide: null,
};
const view: BayView = {
  vehicle: { book: 'b', name: 'Heron', make_model: '', engine: 'petrol', unit: 'km', reading: null, handed_over: null },
  today: '2026-11-25',
  jobs: [oil, belt],
  leading: '98',
  workshops: [],
  currency: 'EUR',
  tray: [],
  guides: [],
  cautions: [],
};

describe('cautions', () => {
  const caution = (key: string) => ({ key, one_by_one: key === 'jacking', sources: [] });
  const known = ['high-voltage', 'jacking', 'workshop', 'moving-parts', 'hot-engine', 'used-fluids', 'handbook'].map(caution);
  const keysFor = (jobs: JobView[]) => cautionsFor(known, jobs).map(({ key }) => key);

  it('come once each, in the order in which they are read, and close with the handbook', () => {
    expect(keysFor([oil, belt])).toEqual(['jacking', 'workshop', 'moving-parts', 'hot-engine', 'used-fluids', 'handbook']);
    expect(cautionsFor(known, [oil])[0]?.one_by_one).toBe(true);
  });

  it('defer to the handbook even where nothing else is known', () => {
    expect(keysFor([])).toEqual(['handbook']);
  });

  it('stand before the form for the owner and not for a workshop', () => {
    expect(stepAfterChoosing('owner')).toBe('cautions');
    expect(stepAfterChoosing('workshop')).toBe('visit');
  });
});

describe('the visit', () => {
  it('knows the jobs by their items', () => {
    expect(chosenJobs(view.jobs, [{ catalogue: 12 }, { own: 'Roof rail' }])).toEqual([belt]);
  });

  it('offers the parts of the last time without their price', () => {
    expect(offeredParts([], [oil])).toEqual([expect.objectContaining({ number: 'Q5', price: '' })]);
  });

  it('names no workshop when the owner did it', () => {
    const draft = { ...freshDraft(view), visit: { ...freshDraft(view).visit, workshop: 'Garage Plover' } };
    expect(visitToRecord(draft).workshop).toBe('');
    expect(visitToRecord({ ...draft, by: 'workshop' }).workshop).toBe('Garage Plover');
  });
});

describe('the reading', () => {
  const draft = freshDraft(view);

  it('begins with the leading digits, which alone are no reading', () => {
    expect(draft.visit.reading).toBe('98');
    expect(visitToRecord(draft).reading).toBe('');
    expect(visitToRecord({ ...draft, visit: { ...draft.visit, reading: '98420' } }).reading).toBe('98420');
    expect(visitToRecord({ ...draft, visit: { ...draft.visit, reading: '984' } }).reading).toBe('984');
  });

  it('of a draft from another day loses digits that nobody typed', () => {
    const tomorrow = { ...view, today: '2026-11-26' };
    expect(resumed(draft, tomorrow).visit.reading).toBe('');
    expect(resumed({ ...draft, visit: { ...draft.visit, reading: '98420' } }, tomorrow).visit.reading).toBe('98420');
    expect(resumed(draft, view)).toEqual(draft);
  });

  it('of a job of the past is empty', () => {
    expect(pastDraft(view, { catalogue: 12 }).visit.reading).toBe('');
  });
});

describe('the jobs', () => {
  const many = Array.from({ length: 40 }, (_, index): JobView => ({ ...belt, item: { of: 'catalogue', number: 100 + index, key: 'battery' } }));

  it('stand with the next visit first, and most of the rest folded', () => {
    const { next, near, further } = groupJobs([...many, oil], []);
    expect(next).toEqual([oil]);
    expect(near.length).toBeLessThan(20);
    expect(near.length + further.length).toBe(40);
  });

  it('never fold what is chosen', () => {
    expect(groupJobs([...many, oil], [{ catalogue: 139 }]).near).toContain(many[39]);
  });

  it('all stand in sight where no visit is planned', () => {
    expect(groupJobs(many, []).further).toEqual([]);
  });
});

it('asks for the day of a job of the past and writes no other', () => {
  const draft = pastDraft(view, { catalogue: 12 });
  expect(draft).toMatchObject({ step: 'visit', past: true });
  expect(draft.visit).toMatchObject({ day: '', items: [{ catalogue: 12 }], found: [] });
});

describe('a visit that a paper tells of', () => {
  const from = { ...nothingRead('p'), day: '2026-03-04', shop: 'Garage Plover', cost: '120.00', parts: [{ ...emptyPart(), number: 'Q5' }] };

  it('has its day, its workshop, its cost, its parts and the paper itself', () => {
    const draft = paperDraft(view, from);
    expect(draft).toMatchObject({ step: 'visit', by: 'workshop', paper: true });
    expect(draft.visit).toMatchObject({ day: '2026-03-04', workshop: 'Garage Plover', cost: '120.00', currency: 'EUR', reading: '', papers: ['p'] });
    expect(draft.visit.parts).toHaveLength(1);
  });

  it('was the owner’s own where no shop is named, in the currency of the paper', () => {
    expect(paperDraft(view, { ...from, shop: '', currency: 'CHF' })).toMatchObject({ by: 'owner', visit: { currency: 'CHF' } });
  });
});

it('adds a part from home and the job it serves, once', () => {
  const part = { name: '', maker: '', number: 'Q5', quantity: '1', measure: 'piece', price: { number: '9', currency: 'EUR' }, served: oil.item, kind: '' };
  const draft = withFitted(withFitted(freshDraft(view), part), { ...part, served: null });
  expect(draft.visit.items).toEqual([{ catalogue: 1 }]);
  expect(draft.visit.parts.map(({ number, price }) => [number, price])).toEqual([['Q5', ''], ['Q5', '']]);
  expect(draft.step).toBe('choose');
});

describe('work that is done', () => {
  const filter = { ...emptyPart(), maker: 'Quarrel', number: 'Q5' };
  const work = { items: [{ catalogue: 1 }], looked: [{ catalogue: 12 }], parts: [filter], by: 'owner' as const };

  it('goes straight to the form, and joins a visit that is on its way', () => {
    const begun = freshDraft(view);
    begun.visit.items = [{ catalogue: 12 }];
    const draft = withWork(begun, work);
    expect(draft).toMatchObject({ step: 'visit', by: 'owner', looked: [{ catalogue: 12 }] });
    expect(draft.visit.items).toEqual([{ catalogue: 12 }, { catalogue: 1 }]);
    expect(draft.visit.parts).toEqual([filter]);
    expect('ends' in draft).toBe(false);
  });

  it('is added once, however often it is handed over, and keeps the trouble that it ends', () => {
    const ends = { subject: '0190', cause: 'vacuum-leak' };
    const once = withWork(freshDraft(view), { ...work, by: 'workshop', ends });
    const twice = withWork(once, work);
    expect(twice.visit).toEqual(once.visit);
    expect(twice.ends).toEqual(ends);
    expect(once.by).toBe('workshop');
  });
});
