import { expect, test } from 'vitest';
import { inEnglish } from '../../ui/in-english.test-data';
import { periodFaults, periodOf } from './period';

test.each([
  ['this week', '2026-11-25', '2026-11-23'],
  ['this week', '2026-11-23', '2026-11-23'],
  ['this week', '2026-11-29', '2026-11-23'],
  ['this month', '2026-11-25', '2026-11-01'],
  ['last 90 days', '2026-03-01', '2025-12-02'],
] as const)('%s, asked on %s, begins on %s', (name, today, from) => {
  expect(periodOf(name, today)).toEqual({ from, to: today });
});

test.each([
  ['one day', { from: '2026-03-01', to: '2026-03-01' }, {}],
  ['400 days', { from: '2025-01-01', to: '2026-02-04' }, {}],
  ['401 days', { from: '2025-01-01', to: '2026-02-05' }, { to: '401 days: at most 400 days at a time.' }],
  ['backwards', { from: '2026-03-02', to: '2026-03-01' }, { to: 'The last day comes before the first.' }],
  ['without a first day', { from: '', to: '2026-03-01' }, { from: 'Give the first day.' }],
  ['without a last day', { from: '2026-03-01', to: '' }, { to: 'Give the last day.' }],
  ['a day that is none', { from: '2026-02-30', to: '2026-03-01' }, { from: 'Give the first day.' }],
])('a period %s', (_case, period, faults) => {
  expect(periodFaults(period, inEnglish('papers'))).toEqual(faults);
});
