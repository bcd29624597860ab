import { expect, test } from 'vitest';
import { nextThing } from '../next/next-thing';
import { curvesOfLot } from '../sheet/curves-of-lot';
import { entriesOf } from '../sheet/entries-of-lot';
import { sheetInEnglish } from '../sheet/in-english.test-data';
import { aLot, aReading, at, ms } from '../test-lots/a-lot';
import { aJudged, aPoint, cooling } from '../test-lots/a-point';
import { previewReadingOf } from './preview-curve';
import { forecastWith, previewForecast } from './preview-forecast';
import { withUnsent } from './with-unsent';

const air = 'Air of the chiller';
const chill = {
  name: 'Chill',
  takenAs: 'curve' as const,
  limits: [cooling],
  probes: ['core'],
  surroundings: { name: air, setPoint: { value: 34, unit: '°F' as const } },
};
/** Towards 34 °F with a time constant of 1.7 h, every ten minutes from noon. */
const readings = [140, 130.1, 121.1, 113, 105.6].map((value, i) => aReading(`12:${i}0`, value, { probe: 'core' }));
const point = aPoint(chill, { readings });
const lot = aLot({ controlPoints: [point] });
const next = (value: number, probe = 'core') => ({ value, unit: '°F', at: ms('12:50'), probe });

test('each reading on the keypad is counted into the forecast before it is sent', () => {
  const first = previewForecast(point, lot, next(98.9));
  expect(first).toMatchObject({ state: 'on course', target: { value: '80', unit: '°F' }, by: ms('13:40'), probe: 'core' });
  expect(previewForecast(point, lot, next(103.5))).not.toEqual(first);
});

test('what is read of the air takes the place of the set point and is judged by nothing', () => {
  expect(previewForecast(point, lot, next(36.5, air))).toMatchObject({ medium: { from: 'measured', celsius: 2.5 } });
  expect(previewReadingOf(point, lot, next(36.5, air))).toEqual([]);
});

test('what waits on this device counts here, otherwise the server’s word does', () => {
  const entry = {
    id: '0195b3c0-0000-7000-8000-000000000001',
    path: '/readings/0195b3c0-0000-7000-8000-000000000001',
    takenAt: at('12:50'),
    state: 'waiting',
    body: {
      lotId: lot.lotId,
      controlPointId: point.controlPoint.controlPointId,
      entered: { value: 98.9, unit: '°F' },
      probe: 'core',
      takenAt: at('12:50'),
    },
  } as unknown as Parameters<typeof withUnsent>[1][number];
  const ahead = withUnsent(lot, [entry]);
  expect(ahead.controlPoints[0]?.readings).toHaveLength(6);
  expect(forecastWith(point, ahead, true)).toMatchObject({ state: 'on course' });
  expect(forecastWith(point, ahead, true)).not.toEqual(forecastWith(point, lot, true));
  expect(forecastWith(point, ahead, false)).toBeUndefined();
});

test('one value, and a stage that is over, have no forecast', () => {
  expect(previewForecast(aPoint({ ...chill, takenAs: 'value' }), lot, next(98.9))).toBeUndefined();
  expect(previewForecast({ ...point, endedAt: at('13:00') }, lot)).toBeUndefined();
});

test('the air is on the sheet as such, bears no verdict, and is no part of the curve', () => {
  const read = aReading('12:45', 36.5, { probe: air });
  const judged = [aJudged(cooling, { kind: 'missed' })];
  const both = aPoint(chill, { readings: [...readings, read], judged, stands: 'running' });
  const entries = entriesOf(aLot({ controlPoints: [both] }), sheetInEnglish);
  expect(entries.find(({ id }) => id === read.readingId)).toMatchObject({
    judged: [],
    notes: [air, 'Judged by no limit', 'Probe A'],
  });
  expect(entries.find(({ kind }) => kind === 'so far')).toMatchObject({ at: ms('12:40'), judged });
  const traces = curvesOfLot(aLot({ controlPoints: [both] }), '°F', ms('13:00'))?.traces;
  expect(traces?.map(({ points }) => points.length)).toEqual([5]);
});

test('air alone has begun no stage', () => {
  const only = aPoint(chill, { readings: [aReading('12:00', 36, { probe: air })], stands: 'not-started' });
  const { do: what } = nextThing(aLot({ meatBlockGrams: 1000, targets: [], controlPoints: [only] }));
  expect(what).toBe('record');
});
