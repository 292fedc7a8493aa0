// The brief holds what is known and no guess at what it is.

import { describe, expect, it } from 'vitest';
import type { BriefView } from '../../../door/types';
import { briefParts, briefText } from './brief';

const view: BriefView = {
  vehicle: { book: 'b', name: 'Heron', make_model: 'Larkspur Estate', engine: 'petrol', unit: 'km', reading: null, handed_over: null },
  vin: null,
  first_use: '2016-06-01',
  fitted: ['turbo'],
  today: '2026-06-01',
  day: '2026-05-30',
  reading: { reading: { count: 98420, unit: 'km' }, day: '2026-05-30' },
  words: 'It whistles and idles badly.',
  when: 'cold mornings',
  symptoms: ['rough-idle', 'hiss-at-idle'],
  absent: ['blue-smoke'],
  codes: [{ code: 'P0171', meaning: null, system: 'powertrain', origin: 'standard', area: null, urgency: null, status: 'confirmed', failure_type: null, causes: ['vacuum-leak'], life: { first: { day: '2026-05-02', reading: null }, last: { day: '2026-05-30', reading: null }, times: 2, cleared: null, returns: [{ left: { day: '2026-05-03', reading: null }, was_cleared: true, back: { day: '2026-05-30', reading: null }, after: { distance: null, days: 27 } }], turns: [], standing: 'present', since: null, warnings: [] } }],
  frames: [{ seen: { day: '2026-05-30', reading: null }, frame: { number: 0, code: 'P0171', values: [{ key: 'engine-speed', value: '812', unit: 'rpm' }] } }],
  readiness: null,
  cleared: '2026-05-31',
  checked: [{ check: 'listen-for-leaks', answer: 'skipped' }],
  work: [{ day: '2026-05-20', reading: null, workshop: '', items: [{ of: 'catalogue', number: 1, key: 'engine-oil' }] }],
  asked: '',
};

describe('the brief', () => {
  it('tells the complaint, when it happens, codes with what was frozen, checks and work', () => {
    const text = briefText(briefParts(view));
    for (const told of ['Larkspur Estate', '98 420 km', 'It whistles', 'cold mornings', 'Rough idle', 'Blue smoke', 'P0171', '812 rpm', '30 May 2026: Frozen', 'last read 30 May 2026, came back once', '1 Jun 2016', 'Turbo', '31 May 2026', 'could not be checked', '20 May 2026', 'own work']) {
      expect(text).toContain(told);
    }
    expect(text).not.toContain('\u00a0');
  });

  it('presents no cause as found, and says that it is no diagnosis', () => {
    const text = briefText(briefParts(view));
    expect(text).not.toContain('Air leaking in');
    expect(text).toContain('no diagnosis');
  });

  it('leaves out what is not known, and always asks for something', () => {
    const bare = briefParts({ ...view, words: '', when: '', symptoms: [], absent: [], codes: [], frames: [], cleared: null, checked: [], work: [] });
    expect(bare).toHaveLength(2);
    expect(bare.at(-1)?.lines.join('')).not.toBe('');
    expect(briefParts({ ...view, asked: 'Please call first.' }).at(-1)?.lines).toEqual(['Please call first.']);
  });
});
