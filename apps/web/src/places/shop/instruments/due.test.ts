import { expect, test } from 'vitest';
import type { Instrument } from './check-method';
import { inEnglish } from '../../../ui/in-english.test-data';
import { dueOf } from './due';

const day = 86_400_000;
const now = Date.parse('2026-05-10T12:00:00Z');
const checked = (daysAgo: number, kind: 'met' | 'missed'): Pick<Instrument, 'lastCheck' | 'checkEveryDays' | 'overdue'> => ({
  checkEveryDays: 7,
  overdue: daysAgo > 7 || kind === 'missed',
  lastCheck: {
    calibrationId: '01990000-0000-7000-8000-000000000001',
    rowId: 'row',
    method: 'ice point',
    expected: 32,
    observed: 32.2,
    unit: '°F',
    action: '',
    verdict: {
      kind,
      ...{ finding: 'check-high', figures: {}, notes: [] },
    },
    made: { personId: '', name: 'Ivo Tarn', at: new Date(now - daysAgo * day).toISOString(), recordedAt: '', station: '' },
  },
});

test.each([
  ['checked two days ago, every seven', checked(2, 'met'), { state: 'met', word: 'In date', margin: 'due in 5 days' }],
  ['checked ten days ago, every seven', checked(10, 'met'), { state: 'missed', word: 'Overdue', margin: 'by 3 days' }],
  [
    'checked a moment ago, after the page’s clock last ticked',
    checked(-0.0001, 'met'),
    { state: 'met', word: 'In date', margin: 'due in 7 days' },
  ],
  [
    'that failed its last check',
    checked(1, 'missed'),
    { state: 'missed', word: 'Out of tolerance', margin: 'check it again before it is used' },
  ],
  ['never checked', { checkEveryDays: 7, overdue: true }, { state: 'missed', word: 'Never checked' }],
])('an instrument %s says when its check is due', (_case, instrument, due) => {
  expect(dueOf(instrument, now, inEnglish('instruments'))).toEqual(due);
});
