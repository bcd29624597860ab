import { expect, test } from 'vitest';
import { degrees } from '../quantity/degrees';
import { allowForError } from './allow-for-error';
import { boilingPointAt, icePoint } from './boiling-point';
import { judgeCalibration } from './judge-calibration';

test.each([
  ['on the point', degrees(32, '°F'), 'met', 'none'],
  ['on the tolerance above', degrees(34, '°F'), 'met', '2 °F above'],
  ['on the tolerance below', degrees(30, '°F'), 'met', '2 °F below'],
  ['a tenth outside above', degrees(34.1, '°F'), 'missed', '2.1 °F above'],
  ['a hundredth outside below', degrees(29.99, '°F'), 'missed', '2.01 °F below'],
])('a thermometer in ice water %s', (_case, reading, kind, difference) => {
  expect(judgeCalibration(reading, icePoint('°F'))).toMatchObject({ kind, difference });
});

test('in °C the tolerance is 1 °C', () => {
  expect(judgeCalibration(degrees(1, '°C'), icePoint('°C')).kind).toBe('met');
  expect(judgeCalibration(degrees(1.01, '°C'), icePoint('°C')).kind).toBe('missed');
});

test('a failed check says what to do', () => {
  expect(judgeCalibration(degrees(36, '°F'), icePoint('°F'))).toMatchObject({
    because: 'It is 4 °F above the expected 32 °F; ± 2 °F is allowed.',
    next: 'Adjust or withdraw it, and look again at everything measured with it since its last good check.',
  });
});

test.each([
  ['no reading', undefined, undefined],
  ['a reading in the other unit', degrees(0, '°C'), undefined],
  ['an open circuit', degrees(999, '°F'), undefined],
  ['a tolerance of the other unit only', degrees(32, '°F'), { '°C': 100 }],
])('%s is undetermined', (_case, reading, tolerance) => {
  expect(judgeCalibration(reading, icePoint('°F'), tolerance).kind).toBe('undetermined');
});

test('the boiling point comes to the tenth of a degree, in either unit', () => {
  expect(boilingPointAt(0, '°F')).toEqual(degrees(212, '°F'));
  expect(boilingPointAt(1500, '°C')).toEqual(degrees(95, '°C'));
  expect(() => boilingPointAt(NaN, '°C')).toThrow('NaN m is not the height of a shop');
  expect(() => boilingPointAt(20_000, '°C')).toThrow(RangeError);
});

test('a limit leaves room for the error of the instrument', () => {
  expect(allowForError(degrees(40, '°F'), degrees(1, '°F'), 'max')).toEqual(degrees(39, '°F'));
  expect(() => allowForError(degrees(40, '°F'), degrees(1, '°C'), 'max')).toThrow('not in the same unit');
});
