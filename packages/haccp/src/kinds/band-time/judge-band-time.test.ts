import fc from 'fast-check';
import { expect, test } from 'vitest';
import { comeUpWithinSixHours } from '../../limit-sets/fsis-come-up';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { CurveContext } from '../../limits/curve-context';
import { judgeBandTime } from './judge-band-time';

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const judge = (readings: CurveReading[], context: Partial<CurveContext> = {}) =>
  judgeBandTime(readings, comeUpWithinSixHours, { ended: true, ...context });

test.each([
  ['exactly 6 h', curve('°F', [0, 50], [120, 70], [240, 100], [360, 130]), 'met', '0 s to spare'],
  ['6 h and a minute', curve('°F', [0, 50], [120, 70], [240, 95], [300, 110], [361, 130]), 'missed', '1 min too long'],
  ['exactly 6 h in °C', curve('°C', [0, 10], [120, 21], [240, 38], [360, 54.4]), 'met', '0 s to spare'],
  ['6 h and a minute in °C', curve('°C', [0, 10], [120, 21], [240, 38], [300, 45], [361, 54.4]), 'missed', '1 min too long'],
  [
    'at most 6 h by the readings, but maybe longer',
    curve('°F', [0, 49], [120, 70], [240, 100], [350, 128], [361, 131]),
    'undetermined',
    '1 min too long',
  ],
  ['surely too long', curve('°F', [0, 40], [120, 60], [240, 80], [360, 100], [480, 125], [500, 140]), 'missed', '2 h 20 min too long'],
])('a come-up of %s', (_case, readings, kind, margin) => {
  expect(judge(readings)).toMatchObject({ kind, margin });
});

test('a segment that may have been inside counts whole, and the straight-line time stands beside it', () => {
  const verdict = judge(curve('°F', [0, 40], [60, 60], [120, 120], [180, 140], [240, 150]));
  expect(verdict).toMatchObject({
    kind: 'met',
    measured: '50 → 130 °F in 3 h',
    because: 'It took at most 3 h; 6 h are allowed.',
    notes: ['By straight lines between the readings: about 2 h.'],
  });
});

test('on the way down, near the bound by the error of the thermometer, nothing is reached again', () => {
  const error = { ended: true, instrumentError: { hundredths: 100, unit: '°F' as const } };
  const cooked = curve('°F', [0, 49], [118, 90], [236, 120], [350, 132], [400, 150], [420, 130.5], [440, 110]);
  const without = cooked.filter(({ at }) => at !== 420 * MINUTE);
  expect([cooked, without].map((readings) => judge(readings, error).measured)).toEqual([
    '50 → 130 °F in 5 h 50 min',
    '50 → 130 °F in 5 h 50 min',
  ]);
  // Nearly as hot once more from below may be there again, with all the time since.
  const again = curve('°F', [0, 49], [118, 90], [236, 120], [350, 132], [370, 129], [390, 129.5], [440, 110]);
  expect(judge(again, error)).toMatchObject({ kind: 'undetermined', measured: '50 → 130 °F in 6 h 30 min' });
});

test('falling back below the bound adds up', () => {
  const verdict = judge(curve('°F', [0, 50], [60, 130], [120, 100], [180, 130]));
  expect(verdict).toMatchObject({ kind: 'met', measured: '50 → 130 °F in 3 h' });
});

test('what follows the end of the cook belongs to chilling', () => {
  const heated = curve('°F', [0, 50], [60, 130], [90, 160], [200, 120]);
  expect(judge(heated)).toMatchObject({ kind: 'met', measured: '50 → 130 °F in 1 h' });
  expect(judge(heated, { ended: false })).toMatchObject({
    kind: 'undetermined',
    measured: '50 → 130 °F in 2 h 50 min',
  });
});

test('while it runs it says how long is left', () => {
  const warming = curve('°F', [0, 50], [60, 80], [120, 100]);
  expect(judge(warming, { ended: false, now: 150 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    next: 'Go on: reach 130 °F within 3 h 30 min.',
    running: { stage: '50 → 130 °F', bound: '130 °F', deadline: 360 * MINUTE },
  });
  expect(judge(warming, { ended: false, now: 361 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    because: '6 h may already be over and 130 °F has not been seen.',
    next: 'Read the core temperature now.',
  });
});

test('a reading past the time and still inside is missed before the end', () => {
  expect(judge(curve('°F', [0, 50], [120, 80], [240, 100], [300, 110], [361, 120]), { ended: false }).kind).toBe('missed');
});

test('meat still colder than the band has not begun', () => {
  const verdict = judge(curve('°F', [0, 38], [60, 45]), { ended: false });
  expect(verdict).toMatchObject({ kind: 'undetermined', running: { bound: '130 °F', deadline: undefined } });
});

test('a cook ended before the bound was seen is undetermined', () => {
  expect(judge(curve('°F', [0, 50], [60, 120]))).toMatchObject({
    kind: 'undetermined',
    because: '130 °F was not reached, so the time is not complete.',
  });
});

test('a first reading already inside leaves the start unknown, unless the start was recorded', () => {
  const readings = curve('°F', [30, 60], [90, 100], [150, 135]);
  expect(judge(readings)).toMatchObject({
    kind: 'undetermined',
    because: 'The first reading is already inside, so the start is not known.',
  });
  expect(judge(readings, { startAt: 0 })).toMatchObject({ kind: 'met', measured: '50 → 130 °F in 2 h 30 min' });
  expect(judge(curve('°F', [0, 140]))).toMatchObject({ kind: 'undetermined' });
});

test('a gap inside the band leaves doubt, unless it is too long even without it', () => {
  expect(judge(curve('°F', [0, 50], [121, 130]))).toMatchObject({
    kind: 'undetermined',
    because: 'There is no reading for 2 h 1 min; at most 2 h may lie between two readings.',
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
  const verdict = judge(curve('°F', [0, 38], [60, 45], [60, 55], [120, 100], [150, 135]));
  expect(verdict).toMatchObject({ kind: 'met', measured: '50 → 130 °F in 2 h 30 min' });
});

test('a band that does not rise is no come-up', () => {
  const falling = { ...comeUpWithinSixHours, from: { '°F': 13000 }, to: { '°F': 8000 } };
  const verdict = judgeBandTime(curve('°F', [0, 132], [60, 100], [90, 80]), falling, { ended: true });
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    finding: 'limit-unusable',
    figures: { fault: 'The band does not end warmer than it begins.' },
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
