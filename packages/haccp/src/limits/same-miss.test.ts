import { expect, test } from 'vitest';
import { degreesOf, timeOf } from '../quantity/quantities';
import { isSameMiss } from './same-miss';
import type { Verdict } from './verdict';

const HOUR = 3_600_000;
const short = (held: number, more: Partial<Verdict> = {}): Verdict => ({
  kind: 'missed',
  finding: 'dwell-too-short',
  figures: { held: timeOf(held), hottest: degreesOf({ hundredths: 15_100, unit: '°F' }) },
  notes: [],
  ...more,
});
const stage = (took: number, kind: 'met' | 'missed') => ({ kind, finding: 'cooling-too-slow', figures: { took: timeOf(took) } });
const worded = (margin: string | undefined, measured = '6.1', because = 'Above the limit.'): Verdict => ({
  kind: 'missed',
  ...{ margin, measured, because },
  notes: [],
});

test.each([
  ['the same figures', short(HOUR), short(HOUR)],
  ['other figures beside it', short(HOUR), short(HOUR, { figures: { ...short(HOUR).figures, hottest: '152 °F' } })],
  ['the same stages missed', short(HOUR, { parts: [stage(1, 'missed')] }), short(2, { parts: [stage(1, 'missed'), stage(9, 'met')] })],
  ['the same words of a kind that has its own', worded('0.8 too high'), worded('0.8 too high')],
  ['the same margin and reason, read otherwise', worded('0.8 too high'), worded('0.8 too high', '6.10')],
  ['the same words without a margin', worded(undefined), worded(undefined)],
])('is the same miss: %s', (_, known, now) => {
  expect(isSameMiss(known, now)).toBe(true);
});

test.each([
  ['nothing before', null, short(HOUR)],
  ['met before', short(HOUR, { kind: 'met' }), short(HOUR)],
  ['met now', short(HOUR), short(HOUR, { kind: 'met' })],
  ['other figures', short(HOUR), short(2 * HOUR)],
  ['another stage too', short(1, { parts: [stage(1, 'missed')] }), short(1, { parts: [stage(1, 'missed'), stage(2, 'missed')] })],
  ['what the formula lacks, since', short(HOUR), short(HOUR, { also: [{ finding: 'formula-not-allowed', figures: {} }] })],
  ['another margin', worded('0.8 too high'), worded('0.9 too high')],
  ['another reason', worded('0.8 too high'), worded('0.8 too high', '6.2', 'Another one.')],
  ['another figure without a margin', worded(undefined), worded(undefined, '6.2')],
  ['words before and codes now', worded('0.8 too high'), short(HOUR)],
  ['codes before and words now', short(HOUR), worded('0.8 too high')],
])('is another miss: %s', (_, known, now) => {
  expect(isSameMiss(known, now)).toBe(false);
});
