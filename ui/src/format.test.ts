// Numbers, days and parts as they stand on the page.

import { describe, expect, it } from 'vitest';
import { amountTaken, day, daysBetween, dayWithWeekday, decimal, foundText, fromNow, fuelText, hasWords, itemName, itemNames, money, number, partTitle, quantity, reading, use, workTime } from './format';

const NBSP = '\u00a0';

describe('numbers', () => {
  it('stand in groups of three that no line breaks apart', () => {
    expect(number(98_420)).toBe(`98${NBSP}420`);
    expect(number(9_840)).toBe(`9${NBSP}840`);
    expect(number(12)).toBe('12');
    expect(reading({ count: 1_234_567, unit: 'mi' })).toBe(`1${NBSP}234${NBSP}567${NBSP}mi`);
  });

  it('keep the decimals that they came with', () => {
    expect(decimal('12.50')).toBe('12.50');
    expect(decimal('1200')).toBe(`1${NBSP}200`);
    expect(money({ number: '1182.40', currency: 'EUR' })).toBe(`1${NBSP}182.40${NBSP}EUR`);
  });

  it('tell a fill on one line, and consumption in its unit', () => {
    const fuel = { kind: 'petrol', amount: '41.300', unit: 'litre', price: null, price_follows: null, fill: 'part' };
    expect(fuelText({ ...fuel, total: { number: '69.76', currency: 'EUR' } })).toBe(`41.30${NBSP}litres, 69.76${NBSP}EUR, part fill`);
    expect(fuelText({ ...fuel, total: null })).toBe(`41.30${NBSP}litres, part fill`);
    expect(use({ number: '7.3', hundredths: 725 }, 'litres-per-100-km')).toBe(`7.3${NBSP}L/100 km`);
    expect(use({ number: '32.4', hundredths: 3244 }, 'miles-per-us-gallon')).toBe(`32.4${NBSP}mpg (US)`);
  });

  it('lose only a third decimal of a volume that says nothing', () => {
    expect(amountTaken({ number: '41.300', unit: 'litre' })).toBe(`41.30${NBSP}litres`);
    expect(amountTaken({ number: '41.305', unit: 'litre' })).toBe(`41.305${NBSP}litres`);
    expect(amountTaken({ number: '28.400', unit: 'kilowatt-hour' })).toBe(`28.40${NBSP}kWh`);
  });
});

describe('days', () => {
  it('of a visit come with the weekday, with the year where it is another one, and with how far off they are', () => {
    expect(dayWithWeekday('2026-12-12', '2026-11-25')).toBe('Sat 12 December');
    expect(dayWithWeekday('2027-01-05', '2026-11-25')).toBe('Tue 5 January 2027');
    expect(fromNow('2026-11-25', '2026-12-12')).toBe('in 17 days');
    expect(fromNow('2026-11-25', '2026-11-25')).toBe('today');
    expect(fromNow('2026-11-25', '2027-05-25')).toBe('in 6 months');
  });

  it('name the month, so that no order of numbers can be mistaken', () => {
    expect(day('2026-11-25')).toBe(`25${NBSP}Nov${NBSP}2026`);
  });

  it('are counted whole, across a change of clocks and a leap day', () => {
    expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
    expect(daysBetween('2026-11-25', '2026-11-01')).toBe(-24);
  });

  it('that are none stand as they came', () => {
    expect(day('soon')).toBe('soon');
  });
});

describe('items and parts', () => {
  const oil = { of: 'catalogue' as const, number: 1, key: 'engine-oil' };

  it('have the names of the catalogue, or the owner’s own, or their number', () => {
    expect(itemNames([oil, { of: 'own', name: 'Roof rail' }])).toBe(`Engine oil and filter${NBSP}· Roof rail`);
    expect(itemName({ of: 'catalogue', number: 900, key: 'from-the-future' })).toContain('900');
  });

  it('are titled by the maker’s number, or by their name', () => {
    const part = { name: 'oil filter', maker: 'Quarrel', number: 'QF 20-118', quantity: '1', measure: 'piece', price: null, served: null, kind: '' };
    expect(partTitle(part)).toBe('Quarrel QF 20-118');
    expect(partTitle({ ...part, maker: '', number: '' })).toBe('oil filter');
    expect(quantity(part)).toBe('1 piece');
    expect(quantity({ ...part, quantity: '4.3', measure: 'litre' })).toBe('4.3 litres');
  });
});

it('tells the time that work takes to ten minutes', () => {
  expect([5, 40, 58, 160, 240].map(workTime)).toEqual(['10 min', '40 min', '1 h', '2 h 40 min', '4 h']);
});

it('tells what was found with what was measured', () => {
  expect(foundText({ finding: 'worn', value: null })).toBe('worn');
  const value = { what: 'tread', value: '3.1', limit: '3.0', unit: 'mm' };
  expect(foundText({ finding: 'within-limits', value })).toBe(`within limits (Tread depth 3.1${NBSP}mm)`);
  expect(foundText({ finding: 'of-a-newer-version', value: null })).toBe('of-a-newer-version');
});

it('finds words in a name without regard to case', () => {
  expect(hasWords('Brake fluid', ' BRAKE ')).toBe(true);
  expect(hasWords('Brake fluid', 'oil')).toBe(false);
  expect(hasWords('Brake fluid', '')).toBe(true);
});
