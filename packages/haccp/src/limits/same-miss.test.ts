import { expect, test } from 'vitest';
import { curve, judge, MINUTE } from '../kinds/cooling/judge-chill.test-data';
import { degreesOf, timeOf } from '../quantity/quantities';
import { isSameMiss, isSameVerdict } from './same-miss';
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
const ppm = (judged: string, more: Verdict['figures'] = {}): Verdict => ({
  kind: 'missed',
  finding: 'ppm-above',
  figures: { judged: { value: judged, unit: 'ppm' }, ...more },
  notes: [],
});

test.each([
  ['the same figures', short(HOUR), short(HOUR)],
  ['other figures beside it', short(HOUR), short(HOUR, { figures: { ...short(HOUR).figures, hottest: '152 °F' } })],
  ['the same stages missed', short(HOUR, { parts: [stage(1, 'missed')] }), short(2, { parts: [stage(1, 'missed'), stage(9, 'met')] })],
  [
    'as much of a substance, which of the ingredients was weighed last',
    ppm('187.5', { ingredient: 'Cure' }),
    ppm('187.5', { ingredient: 'Salt' }),
  ],
  ['less time left', ppm('187.5', { leftThen: timeOf(2) }), ppm('187.5', { left: timeOf(1) })],
])('is the same miss: %s', (_, known, now) => {
  expect(isSameMiss(known, now)).toBe(true);
});

test.each<[string, boolean, [number, number][]]>([
  [
    'one that was ended above its bound',
    true,
    [
      [0, 130],
      [80, 85],
    ],
  ],
  [
    'one over its time that goes on',
    false,
    [
      [0, 130],
      [105, 85],
    ],
  ],
])('a chill is the same miss whenever it is judged: %s', (_, ended, points) => {
  const judged = (now?: number) => judge(curve('°F', ...points), { ended, now });
  expect(judged(100 * MINUTE).kind).toBe('missed');
  for (const now of [3000 * MINUTE, undefined]) {
    expect(isSameMiss(judged(100 * MINUTE), judged(now))).toBe(true);
    expect(judged(now).figures).toEqual(judged(100 * MINUTE).figures);
  }
});

test.each([
  ['nothing before', null, short(HOUR)],
  ['met before', short(HOUR, { kind: 'met' }), short(HOUR)],
  ['met now', short(HOUR), short(HOUR, { kind: 'met' })],
  ['other figures', short(HOUR), short(2 * HOUR)],
  ['as much of another probe', short(HOUR, { probe: 'A' }), short(HOUR, { probe: 'B' })],
  ['another stage too', short(1, { parts: [stage(1, 'missed')] }), short(1, { parts: [stage(1, 'missed'), stage(2, 'missed')] })],
  ['what the formula lacks, since', short(HOUR), short(HOUR, { also: [{ finding: 'formula-not-allowed', figures: {} }] })],
  ['more of a substance', ppm('187.5'), ppm('188')],
  ['another finding', ppm('187.5'), short(HOUR)],
])('is another miss: %s', (_, known, now) => {
  expect(isSameMiss(known, now)).toBe(false);
});

test.each([
  ['the same', short(HOUR), short(HOUR), true],
  ['other notes', short(HOUR), short(HOUR, { notes: [{ code: 'cannot-be' }] }), true],
  ['a figure that is told beside it', ppm('187.5', { ingredient: 'Cure' }), ppm('187.5', { ingredient: 'Salt' }), false],
  ['less time left', ppm('187.5', { leftThen: timeOf(2) }), ppm('187.5', { left: timeOf(1) }), true],
  ['met now', short(HOUR), short(HOUR, { kind: 'met' }), false],
  ['the stages of one that is met', short(1, { kind: 'met' }), short(1, { kind: 'met', parts: [stage(1, 'met')] }), true],
  ['one more stage missed', short(1), short(1, { parts: [stage(1, 'missed')] }), false],
  ['what the formula lacks, since', short(1), short(1, { also: [{ finding: 'formula-not-allowed', figures: {} }] }), false],
])('says the same of a limit: %s', (_, known, now, same) => {
  expect(isSameVerdict(known, now)).toBe(same);
});
