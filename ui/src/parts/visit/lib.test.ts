// The visit form: items, parts, and the way back from a line of the book.

import { describe, expect, it } from 'vitest';
import type { BookLine, CatalogueLine } from '../../door/types';
import { cleaned, emptyPart, emptyVisit, itemAddress, itemAt, lookedAt, offered, readingOn, sameItem, servedBy, toggled, visitOf, withFound } from './lib';

const line: BookLine = {
  subject: 's',
  day: '2025-11-03',
  reading: { count: 91_200, unit: 'km' },
  says: {
    kind: 'visit',
    workshop: 'Garage Plover',
    items: [{ of: 'catalogue', number: 1, key: 'engine-oil' }, { of: 'own', name: 'Roof rail' }],
    parts: [
      { name: 'oil', maker: 'Quarrel', number: 'Q5', quantity: '4.3', measure: 'litre', price: { number: '41.00', currency: 'CHF' }, served: { of: 'catalogue', number: 1, key: 'engine-oil' }, kind: 'long-life-oil' },
    ],
    cost: null,
    note: '',
    found: [{ item: { of: 'catalogue', number: 27, key: 'tyres' }, finding: 'within-limits', value: { what: 'tread', value: '4.1', limit: '3.0', unit: 'mm' } }],
    papers: [{ subject: 'p', hash: 'h', width: 1, height: 1, filed: '2025-11-03', whole: null, page: null }],
  },
  written: '2025-11-03',
  amended: 0,
  struck: null,
};

describe('items', () => {
  it('are the same by number or by words', () => {
    expect(sameItem({ catalogue: 1 }, { catalogue: 1 })).toBe(true);
    expect(sameItem({ catalogue: 1 }, { own: '1' })).toBe(false);
    expect(sameItem({ own: 'Roof rail' }, { own: 'Roof rail' })).toBe(true);
  });

  it('go in and out', () => {
    const one = toggled([], { catalogue: 1 });
    expect(toggled(one, { own: 'a' })).toEqual([{ catalogue: 1 }, { own: 'a' }]);
    expect(toggled(one, { catalogue: 1 })).toEqual([]);
  });
});

describe('a line of the book', () => {
  it('comes back into a form whole, with the currency of a price where no cost was written', () => {
    const visit = visitOf(line);
    expect(visit).toMatchObject({ reading: '91200', workshop: 'Garage Plover', currency: 'CHF', papers: ['p'] });
    expect(visit?.items).toEqual([{ catalogue: 1 }, { own: 'Roof rail' }]);
    expect(visit?.parts[0]).toMatchObject({ quantity: '4.3', price: '41.00', item: { catalogue: 1 }, kind: 'long-life-oil' });
    expect(visit?.found).toEqual([{ item: { catalogue: 27 }, finding: 'within-limits', value: '4.1' }]);
  });

  it('that is no visit gives no form', () => {
    expect(visitOf({ ...line, says: { kind: 'newer' } })).toBeUndefined();
  });
});

it('has leading digits in the reading only today, and never in place of what was typed', () => {
  const today = '2026-11-25';
  expect(readingOn('2026-11-20', today, '98', '98')).toBe('');
  expect(readingOn(today, today, '', '98')).toBe('98');
  expect(readingOn('2026-11-20', today, '98420', '98')).toBe('98420');
  expect(readingOn(today, today, '97100', '98')).toBe('97100');
});

it('leaves out part rows in which nothing was written', () => {
  const visit = { ...emptyVisit('EUR'), parts: [emptyPart(), { ...emptyPart(), number: 'Q5' }] };
  expect(cleaned(visit).parts).toHaveLength(1);
});

it('finds an item again by its address', () => {
  expect(itemAt(itemAddress({ of: 'catalogue', number: 27, key: 'tyres' }))).toEqual({ catalogue: 27 });
  expect(itemAt(itemAddress({ of: 'own', name: '27' }))).toEqual({ own: '27' });
  expect(itemAt('')).toBeUndefined();
});

it('takes a part to serve what it names, or the only item of the visit', () => {
  expect(servedBy({ ...emptyPart(), item: { catalogue: 5 } }, [{ catalogue: 1 }])).toEqual({ catalogue: 5 });
  expect(servedBy(emptyPart(), [{ catalogue: 1 }])).toEqual({ catalogue: 1 });
  expect(servedBy(emptyPart(), [{ catalogue: 1 }, { catalogue: 2 }])).toBeUndefined();
});

describe('what was found', () => {
  const row = (number: number, key: string, findings = ['worn']): CatalogueLine => ({ number, key, kinds: [], findings, measured: null });
  const catalogue = [row(15, 'tyre-check'), row(27, 'tyres'), row(67, 'roadworthiness', [])];

  it('is asked of what was looked at and of what a look measures on, each once', () => {
    const found = [{ item: { catalogue: 27 }, finding: 'worn', value: '' }];
    expect(lookedAt([{ catalogue: 15 }, { catalogue: 67 }], found, [{ catalogue: 27 }], catalogue)).toEqual([{ catalogue: 15 }, { catalogue: 27 }]);
  });

  it('is asked of what the plan leaves out only where it was done, or found already', () => {
    expect(lookedAt([{ catalogue: 15 }], [], [], catalogue)).toEqual([{ catalogue: 15 }]);
    expect(lookedAt([{ catalogue: 27 }], [], [], catalogue)).toEqual([{ catalogue: 27 }]);
    const found = [{ item: { catalogue: 27 }, finding: 'worn', value: '' }];
    expect(lookedAt([], found, [], catalogue)).toEqual([{ catalogue: 27 }]);
  });

  it('may be on anything else that the plan has and that can be found on', () => {
    const planned = [{ catalogue: 15 }, { catalogue: 67 }, { own: 'Roof rail' }];
    expect(offered(planned, [], catalogue).map(({ number }) => number)).toEqual([15]);
    expect(offered(planned, [{ catalogue: 15 }], catalogue)).toEqual([]);
  });

  it('stands once for each item, and is taken out when it is emptied', () => {
    const worn = { item: { catalogue: 27 }, finding: 'worn', value: '' };
    expect(withFound([worn], { ...worn, finding: 'cracked' })).toEqual([{ ...worn, finding: 'cracked' }]);
    expect(withFound([worn], { ...worn, finding: '' })).toEqual([]);
  });
});
