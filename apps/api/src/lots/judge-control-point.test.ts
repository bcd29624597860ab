import type { ControlPoint } from '@larderbook/contracts';
import { coldHolding, cookedMeat65Log, coolingUncured, nitriteComminutedRefrigerated, type CriticalLimit } from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { judgeControlPoint } from './judge-control-point';
import type { Taken } from './judge-reading';
import { withWeighing, type WentIn } from './what-went-in';

const start = Date.parse('2026-03-02T08:00:00Z');
const at = (minute: number) => new Date(start + minute * 60_000);
const gram = 10n ** 15n;

const aPoint = (takenAs: ControlPoint['takenAs'], limit: CriticalLimit, probes: string[] = []): ControlPoint => ({
  controlPointId: 'point',
  stepId: 'step',
  name: 'Point',
  kind: 'critical',
  hazard: 'Growth',
  takenAs,
  limits: [{ limitId: 'limit', limit }],
  probes,
  monitoring: { what: '', how: '', howOften: '', who: '' },
  correctiveAction: '',
  verification: '',
});
const temperature = (minute: number, value: number, probe = ''): Taken => ({
  id: `${minute}${probe}`,
  probe,
  takenAt: at(minute),
  value,
  unit: '°F',
  answer: null,
  seen: '',
});
const grams = (minute: number, value: number, probe: string): Taken => ({
  ...temperature(minute, value, probe),
  unit: 'g',
});
const answer = (holds: boolean, seen: string): Taken => ({
  id: seen,
  probe: '',
  takenAt: at(0),
  value: null,
  unit: null,
  answer: holds,
  seen,
});

const empty: WentIn = {
  inputs: [],
  held: [],
  weighings: [],
  reworked: [],
  composition: { meat: 0n, toSeason: 0n, all: 0n, substances: new Map() },
  phase: { salt: 0n, water: 0n },
};
const tenKilos: WentIn = {
  ...empty,
  inputs: [{ id: 'pork', lotId: 'lot', isWeighed: false, takenAt: at(-60), mass: 10_000n * gram }],
  held: [{ mass: 10_000n * gram, name: 'Pork' }],
};

const coldRoom = aPoint('value', coldHolding);
const label = aPoint('attestation', {
  kind: 'attestation',
  statement: 'The label is right.',
  source: coldHolding.source,
});
const cook = aPoint('curve', cookedMeat65Log);
const chill = aPoint('curve', coolingUncured);
const cure = aPoint('weighings', nitriteComminutedRefrigerated); // 120 to 156.25 ppm

describe('a single value', () => {
  test.each([
    ['nothing read yet', [], 'not-started'],
    ['one within the limit', [temperature(0, 41)], 'met'],
    ['one beyond it', [temperature(0, 41.1)], 'missed'],
    ['a later good one does not undo the miss', [temperature(0, 45), temperature(30, 38)], 'missed'],
    ['one that cannot be true', [temperature(0, 38), temperature(30, 999)], 'undetermined'],
  ])('%s', (_case, readings, stands) => {
    expect(judgeControlPoint(coldRoom, { readings }).stands).toBe(stands);
  });

  test('the worst of them is the one that is shown', () => {
    const { judged } = judgeControlPoint(coldRoom, {
      readings: [temperature(0, 38), temperature(10, 47), temperature(20, 44)],
    });
    expect(judged).toMatchObject([
      { verdict: { finding: 'range-above', figures: { read: { value: '47', unit: '°F' }, by: { value: '6', unit: '°F' } } } },
    ]);
  });
});

test.each([
  ['no answer yet', [], 'not-started'],
  ['yes, and what was seen', [answer(true, 'Roll 12.')], 'met'],
  ['yes, and nothing else', [answer(true, '')], 'undetermined'],
  ['no', [answer(false, 'Roll of the stew.')], 'missed'],
])('an answer: %s', (_case, readings, stands) => {
  expect(judgeControlPoint(label, { readings }).stands).toBe(stands);
});

describe('a curve', () => {
  test.each([
    ['nothing read, not finished', [], undefined, 'not-started'],
    ['nothing read, and finished all the same', [], 60, 'undetermined'],
    ['still too cold', [temperature(0, 120)], undefined, 'running'],
    ['hot enough for long enough', [temperature(0, 145), temperature(4, 145)], undefined, 'met'],
    ['finished too cold', [temperature(0, 120), temperature(10, 129)], 11, 'missed'],
    ['finished with a gap in the hold', [temperature(0, 150), temperature(40, 150)], 41, 'undetermined'],
  ])('a cook, %s', (_case, readings, endedAt, stands) => {
    expect(judgeControlPoint(cook, { readings, endedAt: endedAt === undefined ? undefined : at(endedAt) }).stands).toBe(stands);
  });

  test('a chill that is too slow is missed before it is finished', () => {
    const readings = [temperature(0, 140), temperature(10, 125), temperature(105, 85)];
    expect(judgeControlPoint(chill, { readings }).stands).toBe('missed');
  });

  test('a chill first read below its bound counts from the end of the cook it follows', () => {
    const readings = [temperature(30, 100), temperature(60, 79), temperature(240, 40)];
    expect(judgeControlPoint(chill, { readings, endedAt: at(241) }).stands).toBe('undetermined');
    expect(judgeControlPoint(chill, { readings, endedAt: at(241), startAt: at(0) }).stands).toBe('met');
  });

  test.each([
    ['a sausage of 22 mm may fall so fast', 22, 15, 'met'],
    ['in three minutes not even that', 22, 3, 'undetermined'],
    ['a log of 60 mm may not', 60, 15, 'undetermined'],
  ])('141 °F that falls to 37 °F: %s', (_case, value, minutes, stands) => {
    const point: ControlPoint = { ...chill, piece: { shape: 'cylinder', smallest: { value, unit: 'mm' } } };
    const readings = [temperature(0, 141), temperature(minutes, 37), temperature(60, 37)];
    expect(judgeControlPoint(point, { readings, endedAt: at(61) }).stands).toBe(stands);
    // What the plan states stands before what is usual of the class.
    const usual = { shape: 'sphere', smallest: { value: 200, unit: 'mm' } } as const;
    expect(judgeControlPoint(point, { readings, endedAt: at(61), piece: usual }).stands).toBe(stands);
  });

  test('says nothing of meat that went in after its last reading, nor does one that was not of the core', () => {
    const put = (minutes: number): WentIn => ({
      ...tenKilos,
      inputs: tenKilos.inputs.map((input) => ({ ...input, takenAt: at(minutes) })),
    });
    const readings = [temperature(0, 141), temperature(15, 37), temperature(60, 37)];
    const point: ControlPoint = { ...chill, piece: { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } } };
    const stands = (minutes: number, read = readings, end = 61) =>
      judgeControlPoint(point, { readings: read, endedAt: at(end), wentIn: put(minutes) }).stands;
    expect([-10, 60, 62, 63].map((minutes) => stands(minutes))).toEqual(['met', 'met', 'met', 'undetermined']);
    expect(stands(100, [...readings, { ...temperature(120, 37), word: 'not of the core' as const }], 121)).toBe('undetermined');
    // An end recorded early counts: what was read after it does not speak for the meat either.
    expect(stands(50, readings, 40)).toBe('undetermined');
  });

  test('air that was read colder than ice water, and again, lets a core fall faster; read once it may be a slip', () => {
    const surroundings = { name: 'Air of the freezer' };
    const point: ControlPoint = { ...chill, surroundings, piece: { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } } };
    const core = [temperature(0, 141), temperature(5, 37), temperature(60, 37)];
    const air = [temperature(1, -30, surroundings.name), temperature(3, -28, surroundings.name)];
    expect(judgeControlPoint(point, { readings: core, endedAt: at(61) }).stands).toBe('undetermined');
    expect(judgeControlPoint(point, { readings: [...air.slice(0, 1), ...core], endedAt: at(61) }).stands).toBe('undetermined');
    expect(judgeControlPoint(point, { readings: [...air, ...core], endedAt: at(61) }).stands).toBe('met');
  });

  test('a probe of the plan that was not read keeps the limit from being met', () => {
    const { judged } = judgeControlPoint(aPoint('curve', cookedMeat65Log, ['left', 'right']), {
      readings: [temperature(0, 160, 'left')],
    });
    expect(judged).toMatchObject([{ verdict: { kind: 'undetermined', notes: [{ code: 'probe-silent', figures: { probe: 'right' } }] } }]);
  });

  test('a marked piece that was never weighed keeps a loss of weight from being met', () => {
    const { source } = cookedMeat65Log;
    const drying = aPoint('curve', { kind: 'weightLoss', percent: 35, source }, ['piece 1', 'piece 2']);
    const weighed = (probe: string) => [grams(0, 1000, probe), grams(60, 600, probe)];
    expect(judgeControlPoint(drying, { readings: weighed('piece 1'), endedAt: at(61) }).stands).toBe('undetermined');
    const both = [...weighed('piece 1'), ...weighed('piece 2')];
    expect(judgeControlPoint(drying, { readings: both, endedAt: at(61) }).stands).toBe('met');
  });
});

describe('a weighed substance', () => {
  const withCure = (wentIn: WentIn, grams: bigint, percent: number | undefined = 6.25) =>
    withWeighing(wentIn, {
      id: 'cure',
      lotId: 'lot',
      itemId: 'cure',
      name: 'Curing salt 6.25 %',
      mass: grams * gram,
      substance: 'sodium nitrite',
      percent,
    });

  test.each([
    ['nothing in', empty, 'not-started'],
    ['meat and no cure', tenKilos, 'not-started'],
    ['cure and no meat', withCure(empty, 25n), 'undetermined'],
    ['too little so far', withCure(tenKilos, 19n), 'undetermined'],
    ['within its bounds', withCure(tenKilos, 25n), 'met'],
    ['too much', withCure(tenKilos, 26n), 'missed'],
    ['cure of unknown content', withCure(tenKilos, 25n, NaN), 'undetermined'],
  ])('%s', (_case, wentIn, stands) => {
    expect(judgeControlPoint(cure, { readings: [], wentIn }).stands).toBe(stands);
  });
});
