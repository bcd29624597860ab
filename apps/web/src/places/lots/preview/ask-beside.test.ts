import { expect, test } from 'vitest';
import { aReading, ms } from '../test-lots/a-lot';
import { aPoint, cooling, coldRoom } from '../test-lots/a-point';
import { askBeside } from './ask-beside';

const air = 'Air of the chiller';
const chill = {
  name: 'Chill',
  takenAs: 'curve' as const,
  limits: [cooling],
  probes: ['core'],
  surroundings: { name: air, setPoint: { value: 34, unit: '°F' as const } },
};
const readings = [
  aReading('12:00', 33.5, { probe: air }),
  aReading('12:01', 130, { probe: 'core' }),
  aReading('12:30', 110, { probe: 'core' }),
  aReading('13:00', 94.7, { probe: 'core' }),
];
const next = (value: number, probe = 'core', unit = '°F') => ({ value, unit, at: ms('13:15'), probe });

test('31 °F after 94.7 °F in air of 33.5 °F asks whether it was 31 °C', () => {
  expect(askBeside(aPoint(chill, { readings }), next(31))).toEqual({
    because: { code: 'colder-than-around', figures: { read: { value: '31', unit: '°F' } } },
    meant: [{ value: 31, unit: '°C' }],
  });
});

test('a chill that goes on, its air, another unit than degrees and a single value are not asked about', () => {
  const point = aPoint(chill, { readings });
  expect(askBeside(point, next(88))).toBeUndefined();
  expect(askBeside(point, next(20, air))).toBeUndefined();
  expect(askBeside(point, next(5.3, 'core', 'pH'))).toBeUndefined();
  expect(askBeside(aPoint({ name: 'Cold room', takenAs: 'value', limits: [coldRoom] }, { readings }), next(31))).toBeUndefined();
});

test('what moves faster than the core can is asked about by the piece of the plan, else the usual one of the product', () => {
  const hot = [aReading('12:00', 140, { probe: 'core' }), aReading('13:14', 78, { probe: 'core' })];
  const thin = { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } } as const;
  const thick = { shape: 'cylinder', smallest: { value: 60, unit: 'mm' } } as const;
  const because = {
    code: 'falls-too-fast',
    figures: { read: { value: '37', unit: '°F' }, last: { value: '78', unit: '°F' }, ago: { value: '60000', unit: 'ms' } },
  };
  const point = aPoint(chill, { readings: hot });
  expect(askBeside(point, next(37), { usualPiece: thin })).toEqual({ because, meant: [] });
  expect(askBeside(point, next(37))).toBeUndefined();
  expect(askBeside(aPoint({ ...chill, piece: thick }, { readings: hot }), next(37))).toEqual({ because, meant: [] });
  expect(askBeside(aPoint({ ...chill, piece: thick }, { readings: hot }), next(77))).toBeUndefined();
});
