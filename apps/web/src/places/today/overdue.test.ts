import { expect, test } from 'vitest';
import { inEnglish } from '../../ui/in-english.test-data';
import { whyOverdue } from './overdue';

const source = { citation: 'the establishment', edition: '', confirmed: true };
const checked = (kind: 'met' | 'missed', margin?: string) => ({
  calibrationId: '',
  rowId: 'row',
  method: 'ice point',
  expected: 32,
  observed: 32.2,
  unit: '°F',
  action: '',
  verdict: { kind, measured: '', limit: '', because: '', notes: [], source, margin },
  made: { personId: '', name: 'Ivo Tarn', at: '2026-05-01T12:00:00Z', recordedAt: '', station: '' },
});

test.each([
  ['was never checked', {}, { word: 'Never checked' }],
  ['failed its last check', { lastCheck: checked('missed', '0.4 °F beyond') }, { word: 'Out of tolerance', margin: '0.4 °F beyond' }],
  [
    'was due on Friday evening by the clock of the shop',
    { lastCheck: checked('met'), dueAt: '2026-05-09T02:00:00Z' },
    { word: 'Overdue', margin: 'since May 8, 2026' },
  ],
])('an instrument that %s says so', (_case, instrument, said) => {
  expect(whyOverdue(instrument, inEnglish('today'))).toEqual(said);
});
