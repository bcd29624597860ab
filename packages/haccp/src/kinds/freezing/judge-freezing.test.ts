import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees } from '../../quantity/degrees';
import type { CurveReading } from '../../thermal/curve';
import { frozenHolds } from './frozen-hold';
import type { Thickness } from './freezing-limit';
import { freezingByCentre, freezingRows } from './freezing-table';
import { freezingFault, judgeFreezing } from './judge-freezing';
import { plainly } from '../../limits/plainly.test-data';

const HOUR = 3_600_000;
const at = (hours: number, fahrenheit: number, probe?: string): CurveReading => ({
  at: hours * HOUR,
  temperature: degrees(fahrenheit, '°F'),
  probe,
});
const hourly = (from: number, to: number, fahrenheit: number, probe?: string) =>
  Array.from({ length: to - from + 1 }, (_, i) => at(from + i, fahrenheit, probe));
const centre = (readings: CurveReading[], ended = true) => judgeFreezing({ read: { what: 'centre' }, readings, ended });

test('a row that is there says so, with its source unconfirmed and its conditions', () => {
  const verdict = centre(hourly(0, 63, -10));
  expect(plainly(verdict)).toEqual({ kind: 'met', finding: 'freezing-held', held: '63 h', at: '-10 °F', needed: '63 h' });
  expect(verdict.notes).toEqual([{ code: 'freezing-for-pork' }, { code: 'freezing-spaced' }]);
});

test('ended short of every row is missed, by the nearest', () => {
  expect(centre(hourly(0, 60, -10))).toMatchObject({
    kind: 'missed',
    finding: 'freezing-short',
    figures: { short: { value: String(3 * HOUR), unit: 'ms' } },
    spare: -3 * HOUR,
  });
});

test('while it freezes it says until when', () => {
  expect(centre([at(0, 20), ...hourly(1, 40, -10)], false)).toMatchObject({
    kind: 'undetermined',
    finding: 'freezing-going-on',
    running: { code: 'freezing', figures: { at: { value: '-10', unit: '°F' } }, until: 64 * HOUR },
  });
  expect(centre([...hourly(0, 40, -10), at(41, 20)], false)).toMatchObject({ running: { until: undefined } });
});

test('a warm reading or a gap longer than two hours breaks the stretch', () => {
  expect(centre([...hourly(0, 40, -10), at(41, 1), ...hourly(42, 70, -10)]).kind).toBe('missed');
  expect(centre([...hourly(0, 40, -10), ...hourly(43, 70, -10)]).kind).toBe('missed');
  expect(centre([...hourly(0, 40, -10), ...hourly(42, 70, -10)]).kind).toBe('met');
});

describe('the air of a freezer', () => {
  const air = (readings: CurveReading[], startAt?: number) =>
    judgeFreezing({ read: { what: 'freezer', thickness: { value: 6, unit: 'in' } }, readings, startAt, ended: true });
  const sixDays = hourly(0, 144, -20);

  test('counts from the moment the meat went in', () => {
    expect(air(sixDays, 0).kind).toBe('met');
    expect(air([...sixDays, null as unknown as CurveReading], 0).kind).toBe('met');
    expect(air(sixDays, HOUR)).toMatchObject({
      kind: 'missed',
      notes: expect.arrayContaining([{ code: 'freezing-before', figures: { count: 1 } }]),
    });
  });

  test.each([undefined, NaN])('is not met where nobody recorded when the meat went in: %s', (startAt) => {
    expect(air(sixDays, startAt)).toMatchObject({
      kind: 'undetermined',
      finding: 'freezing-start-unknown',
      measure: 'freezing',
      butFor: { finding: 'freezing-held' },
    });
    expect(air(sixDays, startAt).spare).toBeUndefined();
    expect(air(sixDays.slice(1), startAt).kind).toBe('missed');
  });

  test('read by a probe before that alone shows nothing', () => {
    expect(air([...hourly(10, 154, -20, 'A'), at(0, -20, 'B')], 10 * HOUR).kind).toBe('undetermined');
  });

  test('before it, the centre is the meat’s own', () => {
    const centred = { read: { what: 'centre' }, readings: hourly(0, 35, -20), ended: true } as const;
    expect(judgeFreezing({ ...centred, startAt: 10 * HOUR }).kind).toBe('met');
  });
});

test('of one instant with two values the warmer counts', () => {
  expect(centre([...hourly(0, 63, -10), at(30, 5)]).kind).toBe('missed');
});

test('every probe must be cold for the same row', () => {
  expect(centre([...hourly(0, 63, -10, 'A'), ...hourly(0, 63, -10, 'B')]).kind).toBe('met');
  expect(centre([...hourly(0, 63, -10, 'A'), ...hourly(0, 60, -10, 'B')]).kind).toBe('missed');
});

test.each<[string, Thickness]>([
  ['no number', { value: NaN, unit: 'in' }],
  ['nothing', { value: 0, unit: 'in' }],
  ['endless', { value: Infinity, unit: 'cm' }],
])('a thickness that is %s is undetermined', (_case, thickness) => {
  const read = { what: 'freezer', thickness } as const;
  expect(judgeFreezing({ read, readings: hourly(0, 800, -30), ended: true })).toMatchObject({
    kind: 'undetermined',
    finding: 'freezing-thickness-unusable',
  });
});

test('thicker than any row is undetermined', () => {
  const read = { what: 'freezer', thickness: { value: 30, unit: 'in' } } as const;
  expect(judgeFreezing({ read, readings: hourly(0, 800, -30), ended: true })).toMatchObject({
    ...{ finding: 'freezing-no-row', figures: { thickness: { value: '30', unit: 'in' } } },
  });
});

test.each([
  ['none', []],
  ['an open circuit', [at(0, -200)]],
  ['a probe that never read', [...hourly(0, 63, -10, 'A'), at(0, 999, 'B')]],
])('no usable reading: %s', (_case, readings) => {
  expect(centre(readings)).toMatchObject({ kind: 'undetermined', finding: 'freezing-no-reading' });
});

test('one reading shows no time', () => {
  expect(centre([at(0, -39)]).kind).toBe('missed');
  expect(centre([at(0, -39)], false).kind).toBe('undetermined');
});

test('a stretch is as long as the same readings counted one by one', () => {
  const step = fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: -3, max: 3 }));
  fc.assert(
    fc.property(fc.array(step, { maxLength: 25 }), fc.integer({ min: 20, max: 120 }), (steps, longestGap) => {
      let now = 0;
      const readings = steps.map(([gap, value]) => ({ ...at(0, value), at: (now += gap) }));
      let longest = 0;
      readings.forEach((from, i) => {
        for (let j = i; j < readings.length; j += 1) {
          const stretch = readings.slice(i, j + 1);
          const isCold = stretch.every(({ temperature }) => temperature.hundredths <= 0);
          const isClose = stretch.every((one, k) => k === 0 || one.at - (stretch[k - 1]?.at ?? 0) <= longestGap);
          if (isCold && isClose) longest = Math.max(longest, (readings[j]?.at ?? 0) - from.at);
        }
      });
      expect(frozenHolds(readings, [{ '°F': 0 }], longestGap)).toMatchObject([{ longest }]);
    }),
  );
});

test('a limit is sound where rows are printed for what is read', () => {
  const freezer = (value: number) => ({ read: { what: 'freezer', thickness: { value, unit: 'in' } } }) as const;
  expect([freezer(6), freezer(28), freezer(NaN)].map(freezingFault)).toEqual([
    undefined,
    { code: 'thickness-unprinted', figures: { thickness: { value: '28', unit: 'in' } } },
    { code: 'thickness-unusable' },
  ]);
});

test('rows are those of the first thickness that is not passed, compared in its own unit', () => {
  const most = (value: number, unit: 'in' | 'cm') => freezingRows({ what: 'freezer', thickness: { value, unit } })?.[0]?.hours;
  expect([most(6, 'in'), most(6.001, 'in'), most(27, 'in'), most(69, 'cm')]).toEqual([20 * 24, 30 * 24, 30 * 24, 30 * 24]);
  expect([most(27.001, 'in'), most(0, 'in'), most(NaN, 'cm')]).toEqual([undefined, undefined, undefined]);
  expect(freezingRows({ what: 'centre' })).toBe(freezingByCentre);
});
