import { expect, test } from 'vitest';
import { degrees } from '../quantity/degrees';
import { judgeHumidity, type HumidityOption } from './judge-humidity';
import { plainly } from '../limits/plainly.test-data';

const MINUTE = 60_000;
const cook = (cooking: number, humid: number, endpoint = degrees(150, '°F')) => ({
  cooking: cooking * MINUTE,
  humid: humid * MINUTE,
  endpoint,
});

/** FSIS-GD-2021-14, Table 1, p. 26. */
test.each<[string, HumidityOption, ReturnType<typeof cook>, string]>([
  ['steam for 80 min of 3 h: half is 90 min', 1, cook(180, 80), 'missed'],
  ['steam for 90 min of 3 h', 1, cook(180, 90), 'met'],
  ['a minute less', 1, cook(180, 89), 'missed'],
  ['90 % for 60 min of 3 h: a quarter is 45, the hour is longer', 3, cook(180, 60), 'met'],
  ['90 % for 59 min of 3 h', 3, cook(180, 59), 'missed'],
  ['90 % for 74 min of 5 h: a quarter is 75', 3, cook(300, 74), 'missed'],
  ['sealed for an hour of 90 min', 2, cook(90, 60), 'met'],
  ['a sealed oven that ends at 142 °F', 2, cook(180, 180, degrees(142, '°F')), 'missed'],
  ['one that ends exactly at 145 °F', 2, cook(180, 180, degrees(145, '°F')), 'met'],
  ['or at 62.8 °C, as printed', 2, cook(180, 180, degrees(62.8, '°C')), 'met'],
  ['or at 62.79 °C', 2, cook(180, 180, degrees(62.79, '°C')), 'missed'],
  ['option 3 at any endpoint', 3, cook(180, 60, degrees(131, '°F')), 'met'],
  ['options 1 to 3 need a cook of an hour', 1, cook(59, 59), 'missed'],
  ['option 4 needs none', 4, cook(20, 20, degrees(131, '°F')), 'met'],
  ['option 4 and a minute dry', 4, cook(180, 179), 'missed'],
  ['nothing recorded', 1, cook(NaN, 60), 'undetermined'],
  ['no cooking time', 1, cook(0, 0), 'undetermined'],
  ['less than nothing', 1, cook(180, -1), 'undetermined'],
  ['endless', 4, cook(Infinity, Infinity), 'undetermined'],
  ['no endpoint', 4, cook(180, 180, { hundredths: NaN, unit: '°F' }), 'undetermined'],
])('%s', (_case, option, given, kind) => {
  expect(judgeHumidity(option, given).kind).toBe(kind);
});

test('the verdict says what was needed', () => {
  expect(plainly(judgeHumidity(1, cook(180, 80)))).toMatchObject({
    ...{ finding: 'humidity-too-short', humid: '1 h 20 min', cooking: '3 h', reached: '150 °F', needed: '1 h 30 min' },
  });
});
