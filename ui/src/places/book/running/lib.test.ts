// Consumption and odometer: what is shown of a period, what is said of work.

import { describe, expect, it } from 'vitest';
import type { FuelSpanView, HelpedView, MarkView, OdometerView } from '../../../door/types';
import { askedText, comparedText, effectText, helpedText, isFound, numbered, otherMarks, pointsOf, spanRows, spansSince, startOf, stretchesOf, unusedText, useSentence, warningOf, workText, yearLevels } from './lib';
import { odometerRows, odometerSentence, planOf, wasReplaced } from './odometer';
import { watchText } from '../../../parts/watch';
import { shiftText, signed } from './watch';

const utc = (text: string) => Date.parse(`${text}T00:00:00Z`);
const km = (count: number) => ({ count, unit: 'km' as const });
const litres = (number: string) => ({ number, unit: 'litre' });

function span(from: string, to: string, hundredths: number): FuelSpanView {
  return { from, to, reading: km(98_420), distance: km(640), amount: litres('41.300'), fills: 1, used: { number: (hundredths / 100).toFixed(1), hundredths } };
}

const spans = [span('2025-12-01', '2025-12-20', 712), span('2025-12-20', '2026-01-10', 730), span('2026-02-01', '2026-02-15', 655)];

describe('the period', () => {
  it('goes back whole years, or before every day', () => {
    expect(startOf('3', '2026-11-25')).toBe('2023-11-25');
    expect(startOf('1', '2024-02-29')).toBe('2023-02-29'); // no such day, and in order all the same
    expect(spansSince(spans, startOf('all', '2026-11-25'))).toEqual(spans);
  });

  it('has the spans that end in it', () => {
    expect(spansSince(spans, '2026-01-10').map(({ to }) => to)).toEqual(['2026-01-10', '2026-02-15']);
  });
});

describe('the line', () => {
  it('breaks where a stretch was left out', () => {
    expect(stretchesOf(spans).map((stretch) => stretch.length)).toEqual([2, 1]);
    expect(stretchesOf([])).toEqual([]);
  });

  it('holds a value over the whole of its span', () => {
    const [first = []] = stretchesOf(spans);
    expect(pointsOf(first)).toEqual([
      { time: utc('2025-12-01'), value: 7.12 },
      { time: utc('2025-12-20'), value: 7.12 },
      { time: utc('2026-01-10'), value: 7.3 },
    ]);
  });

  it('has the mean of a year only within what is drawn', () => {
    const years = [2024, 2025, 2026].map((year) => ({ year, used: { number: '7.0', hundredths: 700 } }));
    const levels = yearLevels({ years } as never, [utc('2025-12-01'), utc('2026-02-15')]);
    expect(levels).toEqual([
      { from: utc('2025-12-01'), to: utc('2026-01-01'), value: 7 },
      { from: utc('2026-01-01'), to: utc('2026-02-15'), value: 7 },
    ]);
  });
});

describe('the words of the plot', () => {
  it('name the ends, the number and the extremes', () => {
    const words = useSentence(spans, 'litres-per-100-km');
    for (const part of ['1\u00a0Dec\u00a02025'.slice(0, 5), '3 full tanks', '6.5', '7.3']) expect(words).toContain(part);
    expect(useSentence([], 'litres-per-100-km')).toBe('');
  });

  it('stand in the table with the newest first', () => {
    const rows = spanRows(spans, 'litres-per-100-km');
    expect(rows).toHaveLength(3);
    expect(rows[0]?.slice(1, 3)).toEqual(['6.5\u00a0L/100 km', '640\u00a0km']);
  });

  it('say why a stretch was left out, and what is odd', () => {
    const unused = { from: '2026-01-10', to: '2026-02-01', distance: km(300), amount: litres('20.000'), why: 'missed' };
    expect(unusedText(unused)).toMatch(/2026.*: a fill within it was not written down$/);
    expect(warningOf({ warning: 'reading-falls', day: '2026-02-01' })).toContain('2026');
    expect(warningOf({ warning: 'larger-than-ever', day: '2026-02-01', amount: litres('70.000'), before: litres('50.000') })).toMatch(/70\.00.*50\.00/);
  });
});

describe('whether it helped', () => {
  const helped = (verdict: HelpedView['verdict']): HelpedView => ({
    subject: 's', day: '2026-01-01', items: [], cleared: null, verdict, change: { low: '-5.0', high: '-2.0' }, before: 12, after: 9, others_near: 0, season_may_be: null,
  });
  const better = helped({ verdict: 'better', low: '2.0', high: '5.0' });

  it('is never said with one bare percentage', () => {
    expect(helpedText(better, 'fuel')).toBe('Yes: the car has used 2.0 to 5.0 % less since.');
    expect(helpedText(helped({ verdict: 'worse', low: '1.0', high: '4.0' }), 'fuel')).toContain('1.0 to 4.0 % more');
    expect(helpedText(helped({ verdict: 'no-larger-than', percent: '3.0' }), 'fuel')).toBe('No difference larger than 3.0 %.');
  });

  it('is asked of work and of codes that were cleared', () => {
    expect(askedText({ ...better, items: [{ of: 'own', name: 'Thermostat' }] })).toBe('Thermostat');
    expect(askedText({ ...better, cleared: ['P0171', 'P0300'] })).toBe('P0171, P0300 cleared');
    expect(askedText({ ...better, cleared: [] })).toBe('codes cleared');
  });

  it('says how much more is needed, of tanks or of charges', () => {
    const yet = (more: number | null) => helped({ verdict: 'cannot-tell-yet', more });
    expect(helpedText(yet(7), 'fuel')).toBe('Cannot tell yet: about 7 more full tanks for a difference of 3 %.');
    expect(helpedText(yet(1), 'electric')).toBe('Cannot tell yet: about one more full charge for a difference of 3 %.');
    expect(helpedText(yet(null), 'fuel')).toMatch(/^Cannot tell:/);
  });

  it('tells what was compared, and what the season may have done', () => {
    expect(comparedText(better)).toMatch(/^12 full tanks before, 9 after/);
    expect(comparedText({ ...better, season_may_be: '8.1' })).toContain('8.1 %');
    expect(comparedText({ ...better, change: null })).toBe('');
    expect([better, helped({ verdict: 'no-larger-than', percent: '3.0' })].map(isFound)).toEqual([true, false]);
  });

  it('is numbered in the order of its days, and other visits are not', () => {
    const later = { ...better, subject: 't', day: '2026-02-01' };
    const early = { ...better, subject: 'r', day: '2020-05-01' };
    expect(numbered([later, better, early], '2025-01-01')).toEqual([{ number: 1, helped: better }, { number: 2, helped: later }]);
    const mark = (subject: string, day: string): MarkView => ({ subject, day, reading: null, items: [] });
    expect(otherMarks([mark('q', '2019-01-01'), mark('s', '2026-01-01'), mark('u', '2026-03-01')], [better], '2025-01-01')).toEqual([mark('u', '2026-03-01')]);
  });

  it('names the first of much work', () => {
    const own = (name: string) => ({ of: 'own' as const, name });
    expect(workText(['a', 'b', 'c'].map(own))).toBe('a\u00a0· b\u00a0· c');
    expect(workText(['a', 'b', 'c', 'd'].map(own))).toBe('a\u00a0· b and 2 more');
  });
});

it('a published effect has its way and its range', () => {
  const effect = (how: string, percent: number | null, to: number | null) => effectText({ key: 'k', how, percent, to, source: 's' });
  expect([effect('by', -15, null), effect('up-to', 20, null), effect('between', 2, 6), effect('none', null, null)]).toEqual([
    '15 % less far', 'up to 20 % further', '2 to 6 % further', 'no difference found',
  ]);
});

describe('the watch', () => {
  const alarm = { since: '2026-03-01', raised: '2026-04-10', likely: '9.6', size: { low: '6.1', high: '13.2' } };

  it('tells since when, how much and within which ends', () => {
    for (const part of ['9.6', '6.1', '13.2', '2026']) expect(watchText(alarm)).toContain(part);
    expect(shiftText({ ...alarm, size: { low: '-7.0', high: '-2.0' } })).toContain('−7.0 to −2.0 %');
  });

  it('writes a change with its sign', () => {
    expect(['4.25', '-2.5', '0.0', '+3'].map(signed)).toEqual(['+4.25', '−2.5', '0.0', '+3']);
  });
});

describe('the odometer', () => {
  const point = (day: string, shown: number, travelled = shown, doubtful = false) => ({ day, shown: km(shown), travelled: km(travelled), doubtful });
  const odometer: OdometerView = {
    points: [point('2025-01-01', 1000), point('2026-01-01', 13_000), point('2026-02-01', 93_000, 93_000, true)],
    ahead: [{ day: '2026-01-01', low: km(12_900), likely: km(13_000), high: km(13_100) }, { day: '2027-01-01', low: km(23_000), likely: km(25_000), high: km(27_000) }],
    per_year: 12_000,
  };

  it('goes on from the last reading that counts', () => {
    const plan = planOf(odometer, '2025-06-01');
    expect(plan.read).toEqual([{ time: utc('2026-01-01'), value: 13_000 }]);
    expect(plan.doubtful).toEqual([{ time: utc('2026-02-01'), value: 93_000 }]);
    expect(plan.likely.map(({ value }) => value)).toEqual([13_000, 25_000]);
    expect(plan.span).toEqual([{ time: utc('2026-01-01'), low: 13_000, high: 13_000 }, { time: utc('2027-01-01'), low: 23_000, high: 27_000 }]);
  });

  it('is not drawn ahead without a pace', () => {
    expect(planOf({ ...odometer, ahead: [] }, '2025-01-01')).toMatchObject({ likely: [], span: [] });
  });

  it('knows a replaced instrument', () => {
    expect(wasReplaced(odometer)).toBe(false);
    expect(wasReplaced({ ...odometer, points: [point('2026-03-01', 20, 13_500)] })).toBe(true);
  });

  it('has a table of what was read and what is likely, and a sentence', () => {
    expect(odometerRows(odometer, '2025-01-01').map((row) => row.length)).toEqual([4, 4, 4, 4, 4]);
    expect(odometerSentence(odometer, '2025-01-01')).toContain('1\u00a0000\u00a0km');
    expect(odometerSentence(odometer, '2030-01-01')).toBe('');
  });
});
