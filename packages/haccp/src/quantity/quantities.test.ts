import { expect, test } from 'vitest';
import { aboutTime, degreesOf, printedIn, timeOf } from './quantities';

test('a length of time is whole milliseconds, whichever way it is counted', () => {
  expect(timeOf(-90_000)).toEqual({ value: '90000', unit: 'ms' });
});

test('a length of time is about so many minutes, or less than one', () => {
  expect(aboutTime(181 * 60_000 + 20_000)).toEqual({ code: 'about-time', figures: { time: { value: '10860000', unit: 'ms' } } });
  expect(aboutTime(-59_999)).toEqual({ code: 'less-than-a-minute' });
});

test('a temperature keeps the unit it was read in', () => {
  expect(degreesOf({ hundredths: 15_150, unit: '°F' })).toEqual({ value: '151.5', unit: '°F' });
});

test.each([
  ['as printed', { '°F': 13_000, '°C': 5440 }, '°F', '130'],
  ['converted where only the other unit is printed', { '°C': 5400 }, '°F', '129.2'],
  ['converted the other way', { '°F': 13_000 }, '°C', '54.4'],
] as const)('a printed figure is %s', (_, printed, unit, value) => {
  expect(printedIn(printed, unit)).toEqual({ value, unit });
});
