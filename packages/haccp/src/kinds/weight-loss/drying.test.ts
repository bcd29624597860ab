import { expect, test } from 'vitest';
import { massOf } from '../../quantity/weigh';
import { forecastDrying } from './forecast-drying';
import { judgeWeightLoss } from './judge-weight-loss';
import { inOrder, type Weighing } from './weighings';
import { plainly } from '../../limits/plainly.test-data';

const DAY = 86_400_000;
const source = { citation: 'an invented plan', edition: '', confirmed: true };
const at = (days: number, kilograms: number): Weighing => ({
  at: days * DAY,
  mass: massOf({ value: kilograms, unit: 'kg' }),
});
const judge = (weighings: Weighing[], ended = false, percent = 33) => judgeWeightLoss(weighings, { percent, source }, ended);
const found = (...judged: Parameters<typeof judge>) => plainly(judge(...judged));
const law = [0, 4, 8, 12, 16].map((days) => at(days, Number((10 - 4 * (1 - Math.exp(-days / 12))).toFixed(3))));

test('enough weight lost is met with what is to spare, rounded down', () => {
  expect(judge([at(0, 10), at(30, 6.55)])).toEqual({
    kind: 'met',
    finding: 'loss-enough',
    figures: { lost: { value: '34.5', unit: '%' }, asked: { value: '33', unit: '%' }, spare: { value: '1.5', unit: '%' } },
    spare: 15_000,
    notes: [],
  });
});

test('a scale that may be wrong takes the worse at both ends', () => {
  const error = massOf({ value: 10, unit: 'g' });
  const judged = (now: number) => plainly(judgeWeightLoss([at(0, 10), at(30, now)], { percent: 33, source }, true, error));
  expect(judged(6.683)).toMatchObject({ kind: 'met', lost: '33 %' });
  expect(judged(6.684)).toMatchObject({ kind: 'missed', short: '0.1 %' });
  expect(judged(9.999)).toMatchObject({ kind: 'missed', lost: '0 %' });
  expect(judged(10.001)).toMatchObject({ finding: 'loss-gained' });
  expect(judgeWeightLoss([at(0, 0.01), at(30, 0.005)], { percent: 33, source }, true, error)).toMatchObject({
    kind: 'undetermined',
    finding: 'loss-within-error',
  });
});

test('while it dries nothing is missed; once ended it is', () => {
  expect(found([at(0, 10), at(20, 7.001)])).toEqual({
    ...{ kind: 'undetermined', finding: 'loss-so-far', lost: '29.9 %', asked: '33 %', short: '3.1 %' },
  });
  expect(found([at(0, 10), at(20, 7)], true)).toEqual({
    ...{ kind: 'missed', finding: 'loss-too-little', lost: '30 %', asked: '33 %', short: '3 %' },
  });
});

test.each([
  ['nothing weighed', [], 'loss-no-start'],
  ['only the start', [at(0, 10)], 'loss-only-start'],
  ['heavier than at the start', [at(0, 10), at(5, 10.001)], 'loss-gained'],
])('%s is undetermined', (_case, weighings, finding) => {
  expect(judge(weighings, true)).toMatchObject({ kind: 'undetermined', finding });
});

test.each([NaN, 0, -5, 101, 33.33333])('a loss of %s %% is no limit', (percent) => {
  expect(judge([at(0, 10), at(5, 1)], true, percent)).toMatchObject({
    kind: 'undetermined',
    finding: 'loss-asked-unusable',
  });
  expect(forecastDrying(law, percent).state).toBe('undetermined');
});

test('weighings come in any order; what cannot be true is left out and said', () => {
  const verdict = judge([at(30, 6.5), at(0, 10), { at: NaN, mass: 1n }, { at: DAY, mass: 0n }, undefined as never]);
  expect(verdict).toMatchObject({ kind: 'met', notes: [{ code: 'weighings-left-out', figures: { count: 3 } }] });
});

test('of one instant the weight that makes the loss smaller is kept', () => {
  expect(inOrder([at(0, 10), at(0, 9.9), at(0, 9.95), at(5, 8), at(5, 8.1), at(5, 8)])).toEqual({
    start: at(0, 9.9),
    later: [at(5, 8.1)],
    leftOut: 0,
  });
});

test('a lot that follows the law is expected on its day, with a range', () => {
  const said = forecastDrying(law, 33);
  const truth = -12 * Math.log(1 - 3.3 / 4);
  expect(said).toMatchObject({ state: 'expected', use: 'advice, never acceptance' });
  if (!('arrival' in said)) throw new Error(said.because.code);
  const { best = NaN, earliest = NaN, latest = NaN } = said.arrival;
  expect(best / DAY).toBeCloseTo(truth, 0);
  expect([earliest < best, best <= latest]).toEqual([true, true]);
  expect(said).toMatchObject({
    because: {
      code: 'loss-expected',
      figures: { percent: { value: '33', unit: '%' }, best: { value: expect.stringMatching(/^4\.\d$/), unit: 'days' } },
    },
  });
});

test.each([
  ['only the start', law.slice(0, 1), 'only-start-weighed'],
  ['two weighings after it', law.slice(0, 3), 'weighed-too-seldom'],
  ['less than half is lost', [10, 9.8, 9.6, 9.4].map((kg, day) => at(day, kg)), 'less-than-half-lost'],
  ['nothing lost lately', [...law.slice(0, 4), at(16, 7.48)], 'no-loss-since'],
  ['laws far apart', [at(0, 10), at(3, 9.3), at(6, 8.9), at(9, 8.1)], 'days-too-far-apart'],
])('too early to tell: %s', (_case, weighings, because) => {
  expect(forecastDrying(weighings, 33)).toMatchObject({
    state: 'too early to tell',
    because: { code: because },
  });
});

test('reached is reached, and a law that ends short may never come there', () => {
  expect(forecastDrying([...law, at(25, 6.7)], 33).state).toBe('reached');
  const dies = [0, 4, 8, 12, 16].map((days) => at(days, Number((10 - 3 * (1 - Math.exp(-days / 5))).toFixed(3))));
  const never = { best: undefined, latest: undefined };
  expect(forecastDrying(dies, 33)).toMatchObject({ state: 'may never', arrival: never });
});

const pounds = (days: number, value: number): Weighing => ({ at: days * DAY, mass: massOf({ value, unit: 'lb' }) });

test.each([
  ['kilograms read as pounds', [at(0, 10), pounds(7, 8.2)], 'loss-impossible-at-once', '62.8 %'],
  ['the start read as kilograms', [at(0, 10), pounds(7, 10)], 'loss-impossible-at-once', '54.6 %'],
  ['one in between', [at(0, 10), pounds(7, 8.2), at(20, 6.4)], 'loss-impossible-at-once', '62.8 %'],
  ['more than meat holds', [at(0, 10), at(9, 5.5), at(20, 2.9)], 'loss-impossible', '71 %'],
])('weights that no meat can lose are not met: %s', (_case, weighings, finding, step) => {
  expect(found(weighings, true)).toMatchObject({ kind: 'undetermined', finding, step });
  expect(forecastDrying(weighings, 33)).toMatchObject({ state: 'undetermined' });
});

test('half at once, and seven tenths in all, can be lost', () => {
  expect(judge([at(0, 10), at(1, 5)]).kind).toBe('met');
  expect(judge([at(0, 10), at(1, 5.5), at(9, 3)]).kind).toBe('met');
});
