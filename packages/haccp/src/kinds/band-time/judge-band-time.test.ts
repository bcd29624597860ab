import fc from 'fast-check';
import { expect, test } from 'vitest';
import { comeUpWithinSixHours } from '../../limit-sets/fsis-come-up';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { CurveContext } from '../../limits/curve-context';
import { judgeCurve } from '../../limits/judge-curve';
import { plainly, type Plainly } from '../../limits/plainly.test-data';

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const judge = (readings: CurveReading[], context: Partial<CurveContext> = {}) =>
  judgeCurve(readings, comeUpWithinSixHours, { ended: true, ...context });
const found = (...judged: Parameters<typeof judge>) => plainly(judge(...judged));

test.each([
  ['exactly 6 h', curve('°F', [0, 50], [120, 70], [240, 100], [360, 130]), 'band-in-time', '0 s'],
  ['6 h and a minute', curve('°F', [0, 50], [120, 70], [240, 95], [300, 110], [361, 130]), 'band-too-long', '1 min'],
  ['exactly 6 h in °C', curve('°C', [0, 10], [120, 21], [240, 38], [360, 54.4]), 'band-in-time', '0 s'],
  ['6 h and a minute in °C', curve('°C', [0, 10], [120, 21], [240, 38], [300, 45], [361, 54.4]), 'band-too-long', '1 min'],
  [
    'at most 6 h by the readings, but maybe longer',
    curve('°F', [0, 49], [120, 70], [240, 100], [350, 128], [361, 131]),
    'band-not-shown',
    undefined,
  ],
  ['surely too long', curve('°F', [0, 40], [120, 60], [240, 80], [360, 100], [480, 125], [500, 140]), 'band-too-long', '2 h 20 min'],
])('a come-up of %s', (_case, readings, finding, by) => {
  const judged = found(readings) as Plainly;
  expect(judged).toMatchObject({
    ...{ finding, kind: { 'band-in-time': 'met', 'band-too-long': 'missed', 'band-not-shown': 'undetermined' }[finding] },
  });
  expect(judged.spare ?? judged.over).toBe(by);
});

test('a segment that may have been inside counts whole, and the straight-line time stands beside it', () => {
  const verdict = judge(curve('°F', [0, 40], [60, 60], [120, 120], [180, 140], [240, 150]));
  expect(verdict.notes).toEqual([{ code: 'band-straight', figures: { straight: { value: '7200000', unit: 'ms' } } }]);
  expect(plainly(verdict)).toMatchObject({ kind: 'met', band: '50 → 130 °F', took: '3 h', allowed: '6 h' });
});

test('on the way down, near the bound by the error of the thermometer, nothing is reached again', () => {
  const error = { ended: true, instrumentError: { hundredths: 100, unit: '°F' as const } };
  const cooked = curve('°F', [0, 49], [118, 90], [236, 120], [350, 132], [400, 150], [420, 130.5], [440, 110]);
  const without = cooked.filter(({ at }) => at !== 420 * MINUTE);
  for (const readings of [cooked, without]) expect(found(readings, error)).toMatchObject({ took: '5 h 50 min' });
  // Nearly as hot once more from below may be there again, with all the time since.
  const again = curve('°F', [0, 49], [118, 90], [236, 120], [350, 132], [370, 129], [390, 129.5], [440, 110]);
  expect(found(again, error)).toMatchObject({ kind: 'undetermined', took: '6 h 30 min' });
});

test('falling back below the bound adds up', () => {
  expect(found(curve('°F', [0, 50], [60, 130], [120, 100], [180, 130]))).toMatchObject({ kind: 'met', took: '3 h' });
});

test('what follows the end of the cook belongs to chilling', () => {
  const heated = curve('°F', [0, 50], [60, 130], [90, 160], [200, 120]);
  expect(found(heated)).toMatchObject({ kind: 'met', took: '1 h' });
  expect(found(heated, { ended: false })).toMatchObject({ kind: 'undetermined', took: '2 h 50 min' });
});

test('nothing undetermined says a margin; past the time in the worst case the lot is to be held', () => {
  const back = curve('°F', [0, 40], [100, 60], [200, 100], [300, 100], [365, 45]);
  expect(found(back, { ended: false })).toMatchObject({ kind: 'undetermined', finding: 'band-running', past: '5 min' });
  for (const judged of [found(back, { ended: false }), found(back)]) expect(judged).not.toHaveProperty('over');
});

test('while it runs it says how long is left', () => {
  const warming = curve('°F', [0, 50], [60, 80], [120, 100]);
  const running = { ended: false, now: 150 * MINUTE };
  expect(found(warming, running)).toMatchObject({ finding: 'band-running', to: '130 °F', left: '3 h 30 min', toGo: '4 h' });
  expect(judge(warming, running).running).toMatchObject({
    ...{ code: 'band', figures: { to: { value: '130', unit: '°F' } }, since: 0, deadline: 360 * MINUTE },
  });
  expect(found(warming, { ended: false, now: 361 * MINUTE })).toMatchObject({ kind: 'undetermined', finding: 'band-overdue' });
});

test('a reading past the time and still inside is missed before the end', () => {
  expect(judge(curve('°F', [0, 50], [120, 80], [240, 100], [300, 110], [361, 120]), { ended: false }).kind).toBe('missed');
});

test('meat still colder than the band has not begun', () => {
  const verdict = judge(curve('°F', [0, 38], [60, 45]), { ended: false });
  expect(verdict).toMatchObject({ kind: 'undetermined', running: { code: 'band', deadline: undefined } });
});

test('a cook ended before the bound was seen is undetermined', () => {
  expect(judge(curve('°F', [0, 50], [60, 120]))).toMatchObject({
    kind: 'undetermined',
    finding: 'band-ended-below',
  });
});

test('a first reading already inside leaves the start unknown, unless the start was recorded', () => {
  const readings = curve('°F', [30, 60], [90, 100], [150, 135]);
  expect(judge(readings)).toMatchObject({
    kind: 'undetermined',
    finding: 'band-start-unknown',
  });
  expect(found(readings, { startAt: 0 })).toMatchObject({ kind: 'met', took: '2 h 30 min' });
  expect(judge(curve('°F', [0, 140]))).toMatchObject({ kind: 'undetermined' });
});

test('a gap inside the band leaves doubt, unless it is too long even without it', () => {
  expect(found(curve('°F', [0, 50], [121, 130]))).toMatchObject({
    ...{ kind: 'undetermined', finding: 'band-gap', gap: '2 h 1 min', tolerated: '2 h' },
  });
  expect(judge(curve('°F', [0, 50], [120, 130])).kind).toBe('met');
  expect(judge(curve('°F', [0, 50], [120, 70], [240, 80], [360, 90], [480, 100], [700, 140])).kind).toBe('missed');
});

test.each([
  ['no readings', []],
  ['only what cannot be', curve('°C', [0, 301])],
  ['no numbers', [{ at: 0, temperature: { hundredths: NaN, unit: '°F' as const } }]],
])('%s is undetermined', (_case, readings) => {
  expect(judge(readings)).toMatchObject({ kind: 'undetermined', finding: 'no-usable-reading' });
});

test('two values of one instant count as the worse, whichever that is on each side', () => {
  expect(found(curve('°F', [0, 38], [60, 45], [60, 55], [120, 100], [150, 135]))).toMatchObject({ kind: 'met', took: '2 h 30 min' });
});

test('a band that does not rise is no come-up', () => {
  const falling = { ...comeUpWithinSixHours, from: { '°F': 13000 }, to: { '°F': 8000 } };
  const verdict = judgeCurve(curve('°F', [0, 132], [60, 100], [90, 80]), falling, { ended: true });
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    finding: 'limit-unusable',
    figures: { fault: { code: 'band-not-warmer' } },
  });
});

test('leaving out a reading of a rising or falling stretch never turns doubt into met', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 4000, max: 14_000 })), {
        minLength: 3,
        maxLength: 10,
      }),
      fc.nat(),
      fc.boolean(),
      (steps, pick, ended) => {
        let at = 0;
        const readings = steps.map(([gap, hundredths]) => ({
          at: (at += gap * MINUTE),
          temperature: { hundredths, unit: '°F' as const },
        }));
        const index = 1 + (pick % (readings.length - 2));
        const [before = 0, own = 0, after = 0] = readings.slice(index - 1, index + 2).map(({ temperature }) => temperature.hundredths);
        fc.pre(own >= Math.min(before, after) && own <= Math.max(before, after));
        const thinned = readings.filter((_, i) => i !== index);
        if (judge(readings, { ended }).kind !== 'met') expect(judge(thinned, { ended }).kind).not.toBe('met');
      },
    ),
  );
});
