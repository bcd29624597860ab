import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import { aroundCore } from './around-core';
import { beginSpeed, rateOf } from './core-speed';
import { examineCurve, type CurveFindings } from './examine-curve';
import type { CurveReading } from './instant';
import { MOST_READINGS } from './too-many';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
type Point = readonly [minutes: number, value: number, unit?: TemperatureUnit];
const curve = (...points: Point[]): CurveReading[] =>
  points.map(([minutes, value, unit = '°C']) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const examine = (readings: CurveReading[], gap?: number) => examineCurve(readings, gap) as CurveFindings;
const kinds = (readings: CurveReading[]) => examine(readings).findings.map(({ kind }) => kind);
const broken = (hundredths: number, at = 5 * MINUTE): CurveReading => ({ at, temperature: { hundredths, unit: '°C' } });

test.each([
  ['nothing in a sound curve', curve([0, 60], [5, 61], [10, 62]), []],
  ['nothing in no readings', [], []],
  ['a value that is no number', [...curve([0, 60]), broken(NaN), broken(Infinity, 6 * MINUTE)], ['no number']],
  ['a time that is none', [...curve([0, 60]), broken(6000, NaN)], ['no time']],
  ['a time no calendar holds', [...curve([0, 60]), broken(6000, 1e303)], ['no time']],
  ['a reading that is not there', [...curve([0, 60]), undefined as unknown as CurveReading], ['no time']],
  ['the codes of an open circuit', curve([0, 60], [5, -127], [6, -200], [7, 999], [8, 6553.5]), ['open circuit']],
  ['a slipped decimal point', curve([0, 60], [5, 602]), ['impossible']],
  ['85 °C before a probe has measured', curve([0, 85], [1, 60], [2, 60.5]), ['power-up']],
  ['a lone spike', curve([0, 60], [5, 70], [10, 61]), ['spike']],
  ['no spike where the neighbours lie far apart in time', curve([0, 60], [10, 70], [20, 61]), []],
  ['a probe pulled out and put back', curve([0, 60], [1, 30], [2, 28], [3, 50], [4, 59]), ['falls faster than the piece can']],
  [
    'a probe pulled out, over readings a few seconds apart',
    curve([0, 60], [0.2, 52], [0.4, 44], [0.6, 36], [0.8, 28]),
    ['falls faster than the piece can'],
  ],
  ['°F typed under °C', curve([0, 65], [5, 150], [10, 66]), ['other unit']],
  ['a core hotter than any, on its own', curve([0, 120]), ['hotter than a core']],
  ['readings out of order', curve([10, 60], [5, 61]), ['out of order']],
  ['a logger that lost its clock', curve([30_000_000, 60], [0, 61]), ['clock reset']],
  ['a clock set back by an hour', curve([0, 60], [5, 61], [-50, 62]), ['an hour off']],
  ['a clock set forward by an hour', curve([0, 60], [5, 61], [10, 62], [15, 63], [80, 64]), ['an hour off']],
  ['a pause of an hour and a little between readings by hand', curve([0, 60], [5, 61], [10, 61], [75, 62]), ['gap']],
  ['two readings of one minute in the other order', curve([0, 60], [1, 61], [0.5, 61]), []],
  ['the same reading twice', curve([0, 60], [0, 60]), ['repeated']],
  ['one instant with two values', curve([0, 60], [0, 61]), ['two values']],
  ['a gap', curve([0, 60], [16, 61]), ['gap']],
  ['the same digits for longer than half an hour', curve([0, 60], [15, 60], [30, 60], [31, 60], [40, 59]), ['flat']],
  ['readings an hour apart, which are no change of the clock', curve([0, 60], [60, 61], [120, 62]), ['gap', 'gap']],
])('found: %s', (_case, readings, found) => {
  expect(kinds(readings)).toEqual(found);
});

test('a finding says where, what and what to do, and that nothing was mended', () => {
  const readings = curve([0, 60], [1, 60.1], [2, 80], [3, 60.2]);
  expect(examine(readings)).toEqual({
    findings: [
      {
        kind: 'spike',
        probe: undefined,
        from: 2 * MINUTE,
        to: 2 * MINUTE,
        readings: 1,
        values: [degrees(80, '°C'), degrees(80, '°C')],
        treatment: 'counts only against the lot',
      },
    ],
    used: 4,
    leftOut: 0,
  });
});

test('what moves too fast says from where, and which readings a person may speak of', () => {
  const named = (...ids: (string | undefined)[]) =>
    curve([0, 60], [1, 80], [2, 90], [3, 95]).map((reading, i) => ({ ...reading, id: ids[i] }));
  const ham = beginSpeed(rateOf({ shape: 'sphere', smallest: { value: 120, unit: 'mm' } }) as number, aroundCore(undefined, 0));
  const found = (...ids: (string | undefined)[]) => (examineCurve(named(...ids), undefined, { speed: ham }) as CurveFindings).findings;
  expect(found('a', 'b', 'c', 'd')).toMatchObject([
    {
      kind: 'rises faster than the piece can',
      from: MINUTE,
      to: 3 * MINUTE,
      readings: 3,
      ids: ['b', 'c', 'd'],
      values: [degrees(60, '°C'), degrees(95, '°C')],
      treatment: 'nothing is met with it',
    },
  ]);
  expect(found('a', undefined, 'c', undefined)[0]?.ids).toBeUndefined();
  expect(found('a', 'b', undefined, undefined)[0]?.ids).toEqual(['b']);
});

test('what a person set aside is found as that, and left out', () => {
  const [first, second] = curve([0, 60], [1, 90]) as [CurveReading, CurveReading];
  expect(examine([first, { ...second, word: 'not of the core' }])).toMatchObject({
    findings: [{ kind: 'not of the core', treatment: 'left out' }],
    used: 1,
    leftOut: 1,
  });
});

test('what goes on is one finding; what comes again is another', () => {
  const again = [...curve([7, 60]), broken(NaN, 8 * MINUTE)];
  const readings = [...curve([0, 60]), broken(NaN), broken(NaN, 6 * MINUTE), ...again];
  expect(examine(readings)).toMatchObject({
    findings: [
      { kind: 'no number', readings: 2, from: 5 * MINUTE, to: 6 * MINUTE },
      { kind: 'no number', readings: 1 },
    ],
    used: 2,
    leftOut: 3,
  });
  expect(examine(curve([0, 60], [200, 61]), 4 * HOUR).findings).toEqual([]);
});

test('each probe is looked through by itself', () => {
  const readings = curve([0, 60], [0, 30]).map((reading, i) => ({ ...reading, probe: i === 0 ? 'A' : 'B' }));
  expect(examine(readings).findings).toEqual([]);
});

test('nothing given makes it throw, and everything is used or left out', () => {
  const hundredths = fc.oneof(fc.integer({ min: -30_000, max: 70_000 }), fc.constantFrom(NaN, Infinity, 0.5, 8500));
  const any = fc.record<CurveReading>({
    at: fc.oneof(fc.integer({ min: 0, max: 5e6 }), fc.constantFrom(NaN, Infinity, 0)),
    temperature: fc.record({ hundredths, unit: fc.constantFrom<TemperatureUnit>('°C', '°F') }),
  });
  const nothing = [undefined, {}, { at: 1 }] as unknown as CurveReading[];
  const mixed = fc.oneof({ weight: 9, arbitrary: any }, fc.constantFrom(...nothing));
  fc.assert(
    fc.property(fc.array(mixed, { maxLength: 20 }), (all) => {
      const { used, leftOut } = examine(all);
      expect(used + leftOut).toBe(all.length);
    }),
  );
});

test('ten million readings are a fault that can be acted on', () => {
  const many = { length: 10_000_000 } as CurveReading[];
  const fault = { fault: 'too-many-readings' };
  expect(examineCurve(many)).toMatchObject(fault);
  expect(MOST_READINGS).toBe(1_000_000);
});
