import { describe, expect, test } from 'vitest';
import { plain } from '../../limits/measurement';
import { boundOf } from '../../quantity/bound';
import { degrees } from '../../quantity/degrees';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import type { AcidReading } from './acid-reached';
import { degreeHoursFahrenheit, type FermentationLimit } from './fermentation-limit';
import { addUpDegreeHours } from './add-up-degree-hours';
import { judgeFermentation } from './judge-fermentation';
import { plainly } from '../../limits/plainly.test-data';

const HOUR = 3_600_000;
const at = (hours: number, fahrenheit: number): CurveReading => ({
  at: Math.round(hours * HOUR),
  temperature: degrees(fahrenheit, '°F'),
});
const pH = (hours: number, value: number): AcidReading => ({ at: Math.round(hours * HOUR), pH: plain(value) });
const hourly = (hours: number, fahrenheit: number) => Array.from({ length: hours + 1 }, (_, i) => at(i, fahrenheit));
const judge = (
  chamber: CurveReading[],
  acid: AcidReading[],
  how: { startAt?: number; ended?: boolean } = {},
  limit = degreeHoursFahrenheit,
) => judgeFermentation({ chamber, acid, startAt: 0, ended: true, ...how }, limit);
const found = (...judged: Parameters<typeof judge>) => plainly(judge(...judged));

const notShownIn = (piece: string) => ({ code: 'acid-not-shown', figures: { piece } });
const leftOut = (count: number) => ({ code: 'acid-left-out', figures: { count } });

test('a fermentation in time says how many there were and how many to spare', () => {
  const verdict = judge(hourly(55, 80), [pH(0, 5.8), pH(50, 5.35), pH(55, 5.3)]);
  expect(verdict).toMatchObject({ spare: 100, notes: [] });
  expect(plainly(verdict)).toEqual({
    ...{ kind: 'met', finding: 'fermentation-in-time', pH: '5.3 pH' },
    ...{ most: '1100 °F·h', hottest: '80 °F', allowed: '1200 °F·h', spare: '100 °F·h' },
  });
});

test('exactly the limit is met, one millisecond more is not', () => {
  expect(judge(hourly(60, 80), [pH(60, 5.3)]).kind).toBe('met');
  const later = 60 + 1 / HOUR;
  expect(found([...hourly(60, 80), at(later, 80)], [pH(later, 5.3)])).toMatchObject({
    ...{ kind: 'missed', finding: 'fermentation-too-many', over: '0.1 °F·h', sure: '1200.1 °F·h' },
  });
});

test('the pH counts from the reading after which none is above it', () => {
  expect(judge(hourly(70, 80), [pH(40, 5.3), pH(65, 5.31), pH(70, 5.2)]).kind).toBe('missed');
  expect(judge(hourly(70, 80), [pH(40, 5.3), pH(40, 5.4)], { ended: false })).toMatchObject({ kind: 'missed' });
  expect(judge(hourly(50, 80), [pH(40, 5.4), pH(40, 5.3)]).kind).toBe('undetermined');
});

describe('of several pieces', () => {
  const of = (piece: string, hours: number, value: number): AcidReading => ({ ...pH(hours, value), probe: piece });

  test('the pH is down once it is in the last of them', () => {
    const both = [of('A', 40, 5.3), of('B', 50, 5.5), of('A', 55, 5.2), of('B', 58, 5.3)];
    expect(found(hourly(60, 80), both)).toMatchObject({ kind: 'met', most: '1160 °F·h', hottest: '80 °F' });
  });

  test('one that was above it and not measured again keeps it from being met', () => {
    expect(judge(hourly(60, 80), [of('B', 30, 5.6), of('A', 40, 5.2)])).toMatchObject({
      kind: 'undetermined',
      notes: [notShownIn('B')],
    });
    const unread: AcidReading = { at: 0, pH: { thousandths: NaN }, probe: 'B' };
    expect(judge(hourly(60, 80), [unread, of('A', 40, 5.2)])).toMatchObject({
      kind: 'undetermined',
      notes: [leftOut(1), notShownIn('B')],
    });
    expect(judge(hourly(60, 80), [pH(30, 5.6), of('A', 40, 5.2)])).toMatchObject({
      kind: 'undetermined',
      notes: [{ code: 'acid-not-shown-nameless' }],
    });
  });
});

test('what the chamber does after the pH is down no longer counts', () => {
  expect(found([...hourly(50, 80), at(51, 120), at(52, 120)], [pH(50, 5.3)])).toMatchObject({
    ...{ kind: 'met', most: '1000 °F·h', hottest: '80 °F' },
  });
  expect(found([...hourly(50, 80), at(51, 100)], [pH(50.5, 5.3)])).toMatchObject({
    ...{ kind: 'missed', most: '1020 °F·h', hottest: '100 °F' },
  });
});

test('while it runs it says how long is left at this temperature, and a warmer chamber may take it away', () => {
  const open = { ended: false };
  expect(found(hourly(50, 80), [pH(50, 5.5)], open)).toMatchObject({
    ...{ kind: 'undetermined', finding: 'fermentation-running', most: '1000 °F·h', allowed: '1200 °F·h', left: '10 h' },
  });
  const running = { code: 'fermentation', figures: { pH: { value: '5.3', unit: 'pH' } }, deadline: 60 * HOUR };
  expect(judge(hourly(50, 80), [pH(50, 5.5)], open).running).toEqual(running);
  expect(found([...hourly(50, 80), at(51, 91)], [], open)).toMatchObject({ kind: 'missed', allowed: '1000 °F·h' });
  expect(judge(hourly(5, 50), [], open).running).toMatchObject({ deadline: undefined });
  for (const hours of [5, 60]) expect(found(hourly(hours, hours === 5 ? 50 : 80), [], open)).not.toHaveProperty('left');
  const nearly = [...hourly(59, 80), at(59.999, 80)];
  expect(found(nearly, [], open)).toMatchObject({ finding: 'fermentation-running', soon: '1' });
});

test('ended without the pH it is open', () => {
  expect(judge(hourly(20, 80), [pH(20, 5.4)])).toMatchObject({
    kind: 'undetermined',
    finding: 'fermentation-never-down',
  });
});

const straight = (value: string) => ({ code: 'fermentation-straight', figures: { straight: { value, unit: '°F·h' } } });

test('over a gap the warmer end decides whether it is shown, the cooler whether it is sure', () => {
  const open = [at(0, 62), at(20, 89), at(21, 89)];
  expect(found(open, [pH(21, 5.3)])).toMatchObject({ kind: 'met', most: '609 °F·h', hottest: '89 °F' });
  expect(judge(open, [pH(21, 5.3)]).notes).toEqual([straight('339')]);
  const long = [at(0, 62), at(60, 89)];
  expect(found(long, [pH(60, 5.3)])).toMatchObject({
    ...{ kind: 'undetermined', finding: 'fermentation-not-shown', gap: '60 h', most: '1740 °F·h', allowed: '1200 °F·h' },
  });
  expect(judge([at(0, 85), at(60, 89)], [pH(60, 5.3)]).kind).toBe('missed');
});

test('nothing undetermined says a margin; past the class in the worst case the lot is to be held', () => {
  const gap = [at(0, 62), at(60, 89)];
  const running = found(gap, [], { ended: false });
  expect(running).toMatchObject({ kind: 'undetermined', finding: 'fermentation-running', past: '540 °F·h' });
  for (const judged of [running, found(gap, []), found(gap, [pH(60, 5.3)])]) expect(judged).not.toHaveProperty('over');
});

test.each([
  ['the chamber was first read late', hourly(20, 80).slice(5), [pH(20, 5.3)]],
  ['the chamber was read no more', hourly(10, 80), [pH(20, 5.3)]],
  ['the pH was down before the chamber was read', [at(1, 80), at(2, 80)], [pH(0.5, 5.3)]],
])('not covered: %s', (_case, chamber, acid) => {
  expect(judge(chamber, acid)).toMatchObject({
    kind: 'undetermined',
    finding: 'fermentation-not-covered',
  });
});

describe('a start that nobody recorded', () => {
  test.each([
    ['in a warm chamber', hourly(20, 80), undefined],
    ['in one that was first read below the base', [at(0, 50), at(1, 60), ...hourly(20, 80).slice(2)], undefined],
    ['and an instant that is none', hourly(20, 80), NaN],
  ])('is never met, %s', (_case, chamber, startAt) => {
    expect(judge(chamber, [pH(20, 5.3)], { startAt })).toMatchObject({
      kind: 'undetermined',
      finding: 'fermentation-no-start',
    });
  });

  test('does not hide too many degree-hours, nor that it is running', () => {
    expect(judge(hourly(61, 80), [pH(61, 5.3)], { startAt: undefined }).kind).toBe('missed');
    expect(judge(hourly(20, 80), [], { startAt: undefined, ended: false }).running).toMatchObject({ code: 'fermentation' });
  });
});

describe('readings that are missing', () => {
  // 41 h at 29.9 °F over 60 °F would be 1225.9; 40.5 h are 1210.95, and 1200 are allowed.
  test('of a fermentation that missed, the first ten make nothing met', () => {
    const all = hourly(41, 89.9);
    expect(found(all, [pH(40.5, 5.3)])).toMatchObject({ kind: 'missed', over: '11 °F·h' });
    expect(judge(all.slice(10), [pH(40.5, 5.3)]).kind).not.toBe('met');
    expect(judge(all.slice(10), [pH(40.5, 5.3)], { startAt: undefined }).kind).not.toBe('met');
  });

  test('a warm-up without the reading in between is counted as warm, and stays missed', () => {
    const warmUp = [at(0, 60), at(1, 89.5), ...hourly(40, 89.9).slice(2), at(40.9, 89.9)];
    expect(judge(warmUp, [pH(40.9, 5.3)]).kind).toBe('missed');
    const without = warmUp.filter((reading) => reading.at !== HOUR);
    expect(judge(without, [pH(40.9, 5.3)])).toMatchObject({
      kind: 'missed',
      notes: [straight('1193.1')],
    });
  });
});

test('a short time at either end counts with its temperature', () => {
  expect(found(hourly(10, 80).slice(1), [pH(11, 5.3)])).toMatchObject({ kind: 'met', most: '220 °F·h', hottest: '80 °F' });
});

test('of one instant with two values the warmer counts, and what cannot be true is named', () => {
  const twice = [...hourly(10, 80), at(5, 90)];
  const verdict = judge([...twice, at(6.5, 999)], [pH(10, 5.3), { at: NaN, pH: plain(5) }, pH(11, 15)]);
  expect(plainly(verdict)).toMatchObject({ most: '220 °F·h', hottest: '90 °F', allowed: '1000 °F·h' });
  expect(verdict.notes).toContainEqual(leftOut(2));
});

test('of one instant with two values the cooler is what is sure over a gap', () => {
  const chamber = [at(0, 70), at(0, 95), at(40, 95)];
  expect(found(chamber, [pH(40, 5.3)])).toMatchObject({ kind: 'undetermined', allowed: '1000 °F·h' });
});

test('no reading of the chamber', () => {
  const verdict = found([], [pH(20, 5.3)]);
  expect(verdict).toMatchObject({ kind: 'undetermined', finding: 'fermentation-no-readings', most: '0 °F·h' });
  expect(verdict).not.toHaveProperty('hottest');
});

const NO_NUMBER = 'degree-hours-unusable';
const [first, second, third] = degreeHoursFahrenheit.classes as [never, never, never];
test.each<[string, Partial<FermentationLimit>, string]>([
  ['no base', { base: { hundredths: NaN, unit: '°F' } }, 'degree-hours-base-unusable'],
  ['no pH', { pH: { thousandths: NaN } }, 'degree-hours-base-unusable'],
  ['no class', { classes: [] }, 'degree-hours-classes-unusable'],
  ['classes out of order', { classes: [second, first, third] }, 'degree-hours-classes-unusable'],
  ['a top on every class', { classes: [first, second] }, 'degree-hours-classes-unusable'],
  ['no number', { classes: [{ isTopIncluded: true, most: NaN }] }, NO_NUMBER],
  ['none allowed', { classes: [{ isTopIncluded: true, most: 0 }] }, NO_NUMBER],
  ['no gap', { longestGapSeconds: NaN }, 'gap-unusable'],
])('a limit with %s judges nothing', (_case, change, code) => {
  expect(judge(hourly(1, 80), [pH(1, 5)], {}, { ...degreeHoursFahrenheit, ...change })).toMatchObject({
    kind: 'undetermined',
    finding: 'limit-unusable',
    figures: { fault: { code } },
  });
});

test.each([
  ['one stretch of six years', [0, 2190]],
  ['two of two years', [0, 730, 1460]],
  ['three of two years', [0, 730, 1460, 2190]],
  ['one of a day and one of six years', [0, 1, 2191]],
])('%s at 110 °F adds up to the last half of a step', (_case, days) => {
  const readings = days.map((day) => ({ at: day * 86_400_000, temperature: degrees(110, '°F') }));
  const base = boundOf({ '°F': 6000 })['°F'];
  const whole = { until: Infinity, lead: 0, tail: 0 };
  const { sure, straight, most } = addUpDegreeHours(prepareCurve(readings), base, Infinity, whole);
  // 50 °F over the base are 25000 steps of the common scale, each counted twice.
  const exact = BigInt((days.at(-1) ?? 0) * 86_400_000) * 50_000n;
  expect([sure, straight, most]).toEqual([exact, exact, exact]);
});

describe('what cannot be is a gap in the chamber, and no pH that is down', () => {
  test('a chamber of 27 "°F" for 72 h, below the base all the time, shows nothing', () => {
    const verdict = judge(hourly(72, 27), [pH(72, 5.2)]);
    expect(verdict.kind).toBe('undetermined');
    expect(verdict.notes[0]).toMatchObject({
      code: 'chamber-too-cold-in-fahrenheit',
      figures: {
        count: 73,
        value: { value: '27', unit: '°F' },
        lowest: { value: '45', unit: '°F' },
        highest: { value: '140', unit: '°F' },
      },
    });
  });

  test('so few of them that no gap is left change nothing; hot ones stay, against the lot', () => {
    const dip = [...hourly(20, 80), at(10.5, 27)];
    expect(judge(dip, [pH(20, 5.3)]).kind).toBe('met');
    const inCelsius = { at: 10.5 * HOUR, temperature: degrees(4, '°C') };
    expect(judge([...hourly(20, 80), inCelsius], [pH(20, 5.3)]).notes[0]).toMatchObject({ code: 'chamber-too-cold-in-celsius' });
    const hot = [...hourly(20, 80), at(20.1, 150)];
    expect(found(hot, [pH(20.1, 5.3)])).toMatchObject({
      kind: 'undetermined',
      finding: 'value-impossible',
      value: '150 °F',
      hottest: '150 °F',
    });
    expect(judge([...hourly(40, 80), at(20.5, 180)], [pH(40, 5.3)]).kind).not.toBe('met');
  });

  test.each([0.53, 0.55, 99])('pH %s is not down, and neither is what was read before it', (value) => {
    const chamber = hourly(60, 75);
    expect(judge(chamber, [pH(0, 5.8), pH(40, value)]).kind).toBe('undetermined');
    expect(judge(chamber, [pH(0, 5.8), pH(30, 5.2), pH(40, value)]).kind).toBe('undetermined');
    expect(judge(chamber, [pH(0, 5.8), pH(40, value), pH(45, 5.2)])).toMatchObject({
      kind: 'met',
      notes: [leftOut(1)],
    });
  });
});
