import { expect, test } from 'vitest';
import { inEnglish } from '../../ui/in-english.test-data';
import { whyOverdue } from './overdue';
import { tell } from '../../ui/tell-here.test-data';

const f = (value: string) => ({ value, unit: '°F' as const });
const checked = (kind: 'met' | 'missed') => ({
  calibrationId: '',
  rowId: 'row',
  method: 'ice point',
  expected: 32,
  observed: 32.2,
  unit: '°F' as const,
  action: '',
  verdict: {
    kind,
    finding: 'check-high',
    figures: { ...{ shown: f('34.4'), expected: f('32'), off: f('2.4'), allowed: f('2') }, beyond: f('0.4') },
    notes: [],
  },
  made: { personId: '', name: 'Ivo Tarn', at: '2026-05-01T12:00:00Z', recordedAt: '', station: '' },
});

test.each([
  ['was never checked', {}, { word: 'Never checked' }],
  ['failed its last check', { lastCheck: checked('missed') }, { word: 'Out of tolerance', margin: '0.4 °F beyond' }],
  [
    'was due on Friday evening by the clock of the shop',
    { lastCheck: checked('met'), dueAt: '2026-05-09T02:00:00Z' },
    { word: 'Overdue', margin: 'since May 8, 2026' },
  ],
])('an instrument that %s says so', (_case, instrument, said) => {
  expect(whyOverdue(instrument, inEnglish('today'), tell)).toEqual(said);
});
