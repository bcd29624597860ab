import { expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { degrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import { judgeCurve } from './judge-curve';
import { judgeDwell } from '../kinds/dwell/judge-dwell';
import type { CurveLimit } from './limit';
import type { Remark } from './verdict';

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const judge = (readings: CurveReading[], limit: CurveLimit = cookedMeat65Log) => judgeCurve(readings, limit, { ended: true });

test('a hold met only by a lone spike is not met, and says why', () => {
  const verdict = judge(curve('°F', [0, 140], [3, 160], [6, 141]));
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    notes: [{ code: 'doubt-spike', figures: { count: 1 } }],
    finding: 'only-with-doubted',
  });
});

test('a hold met without the spike stays met', () => {
  expect(judge(curve('°F', [0, 145], [2, 145], [4, 145], [6, 165], [8, 145])).kind).toBe('met');
});

test.each([
  ['°F typed under °C', curve('°C', [0, 54], [5, 130], [10, 55]), 'doubt-hotter-than-a-core'],
  ['a probe that has not measured yet', curve('°C', [0, 85], [1, 50], [2, 51]), 'doubt-power-up'],
])('%s never meets a hold', (_case, readings, said) => {
  const verdict = judge(readings);
  expect(verdict.kind).toBe('undetermined');
  expect(verdict.notes).toContainEqual({ code: said, figures: { count: 1 } });
});

test('a probe pulled out of the product into the cold never meets a chill', () => {
  const pulled = curve('°F', [0, 140], [10, 131], [20, 129], [21, 50], [22, 38], [300, 37]);
  expect(judge(pulled, coolingUncured)).toMatchObject({
    kind: 'undetermined',
    notes: expect.arrayContaining([
      { code: 'doubt-falls-faster-than-the-piece-can', figures: { count: expect.any(Number) as number } },
    ]) as Remark[],
  });
});

test('a probe put back counts again, once a person has said when it was out', () => {
  const back = curve('°F', [0, 140], [10, 131], [20, 129], [21, 50], [25, 115], [85, 80], [300, 40]);
  expect(judge(back, coolingUncured).kind).toBe('undetermined');
  const said = back.map((one) => (one.at === 21 * MINUTE ? { ...one, word: 'not of the core' as const } : one));
  expect(judge(said, coolingUncured)).toMatchObject({
    kind: 'met',
    notes: expect.arrayContaining([{ code: 'set-aside', figures: { count: 1 } }]) as Remark[],
    restsOn: { readings: 6, leftOut: 1 },
  });
});

test('a fall no faster than the quickest sausage is no doubt', () => {
  const quick = curve('°C', [0, 68], [1, 52], [2, 36], [3, 24], [20, 4]);
  expect(judge(quick, coolingUncured)).toMatchObject({ kind: 'met' });
});

test('a doubt that decides nothing is only noted', () => {
  expect(judge(curve('°F', [0, 130], [2, 150], [4, 130])).kind).toBe('missed');
});

test.each([
  ['no reading', []],
  ['one cold reading', curve('°F', [0, 38])],
  ['one hot reading', curve('°F', [0, 150])],
  ['the same value for hours', curve('°F', [0, 120], [60, 120], [300, 120], [600, 120])],
  ['a core that never cools', curve('°F', [0, 150], [60, 149], [400, 148])],
  ['infinities', [{ at: 0, temperature: { hundredths: Infinity, unit: '°F' as const } }]],
  [
    'no instants',
    [
      { at: NaN, temperature: degrees(38, '°F') },
      { at: Infinity, temperature: degrees(160, '°F') },
    ],
  ],
])('%s never meets a chill, nor a come-up', (_case, readings) => {
  expect(judge(readings, coolingUncured).kind).not.toBe('met');
  expect(judge(readings, comeUpWithinSixHours).kind).not.toBe('met');
});

test('the error of the thermometer is taken off a hold and added to a chill, and said', () => {
  const hold = curve('°F', [0, 145.5], [4, 145.5]);
  const by = (instrumentError: CurveReading['temperature']) => judgeCurve(hold, cookedMeat65Log, { ended: true, instrumentError });
  expect(by(degrees(0.5, '°F')).kind).toBe('met');
  expect(by(degrees(0.6, '°F'))).toMatchObject({
    kind: 'missed',
    notes: expect.arrayContaining([{ code: 'taken-as-the-worse', figures: { error: { value: '0.6', unit: '°F' } } }]) as Remark[],
  });
  // A difference: 0.3 °C is 0.54 °F.
  expect(by(degrees(-0.3, '°C')).kind).toBe('missed');
  const short = judgeCurve(curve('°F', [0, 131]), cookedMeat65Log, { ended: true, instrumentError: degrees(2, '°F') });
  expect(short).toMatchObject({
    kind: 'missed',
    finding: 'dwell-too-cold',
    figures: {
      hottest: { value: '131', unit: '°F' },
      at: { value: '132', unit: '°F' },
      error: { value: '2', unit: '°F' },
      short: { value: '1', unit: '°F' },
      needed: { value: '6720000', unit: 'ms' },
      instant: { value: '160', unit: '°F' },
    },
  });

  const chill = curve('°F', [0, 140], [10, 128], [80, 80], [300, 40]);
  expect(judge(chill, coolingUncured).kind).toBe('met');
  const wrongBy = (error: number) => judgeCurve(chill, coolingUncured, { ended: true, instrumentError: degrees(error, '°F') }).kind;
  expect(wrongBy(1)).toBe('missed');
});

test('what is still to reach is told as the judge takes it: raised or lowered by the error, in the unit read', () => {
  const wrongBy = (limit: CurveLimit, ended: boolean, ...points: [minutes: number, value: number][]) =>
    judgeCurve(curve('°F', ...points), limit, { ended, instrumentError: degrees(1, '°C') });
  const fahrenheit = (value: string) => ({ value, unit: '°F' });
  expect(wrongBy(cookedMeat65Log, false, [0, 129]).figures).toMatchObject({ at: fahrenheit('131.8'), error: fahrenheit('1.8') });
  expect(wrongBy(cookedMeat65Log, false, [0, 140]).running?.figures).toMatchObject({ at: fahrenheit('139.8') });
  expect(wrongBy(cookedMeat65Log, true, [0, 140]).figures).toMatchObject({ at: fahrenheit('139.8'), instant: fahrenheit('159.8') });
  expect(wrongBy(comeUpWithinSixHours, false, [0, 40], [60, 131]).figures).toMatchObject({ to: fahrenheit('131.8') });
  const chilled = wrongBy(coolingUncured, true, [0, 135], [10, 128], [60, 90], [80, 79.5]);
  expect(chilled).toMatchObject({ kind: 'missed', parts: [{ finding: 'cooling-ended-above', figures: { to: fahrenheit('78.2') } }, {}] });
  const chilling = wrongBy(coolingUncured, false, [0, 135], [10, 128], [60, 90]);
  expect(chilling.notes.at(-1)).toMatchObject({ code: 'rescue', figures: { to: fahrenheit('78.2') } });
  const hot = wrongBy(coolingUncured, false, [0, 135]);
  expect(hot).toMatchObject({ finding: 'cooling-not-begun', figures: { from: fahrenheit('131.8') } });
});

test('every judge refuses an error that is no figure', () => {
  const context = { ended: true, instrumentError: { hundredths: Infinity, unit: '°C' as const } };
  expect(judgeDwell([], cookedMeat65Log, context)).toMatchObject({ finding: 'error-unusable' });
  for (const limit of [coolingUncured, comeUpWithinSixHours])
    expect(judgeCurve([], limit, context)).toMatchObject({ finding: 'error-unusable' });
});

test('cold readings from before the end of cooking do not end the chill', () => {
  const readings = curve('°F', [0, 38], [10, 37], [1500, 37]);
  const after = { ended: true, startAt: 60 * MINUTE };
  expect(judgeCurve(readings, coolingUncured, after).kind).not.toBe('met');
  const soon = (last: number) => curve('°F', [0, 38], [10, 37], [100, last]);
  expect(judgeCurve(soon(39), coolingUncured, after).kind).toBe('met');
  // No hotter than before the recorded end: it does not show that the core was heated in between.
  expect(judgeCurve(soon(38), coolingUncured, after).kind).toBe('undetermined');
});
