import { describe, expect, test } from 'vitest';
import type { AttestationLimit } from '../kinds/attestation/attestation-limit';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { degrees } from '../quantity/degrees';
import type { HumidityKept } from './humidity-kept';
import { judgeHumidityKept, type CookSeen } from './judge-humidity-kept';
import { cookedMeat65Log } from './fsis-meat';
import { plainly } from '../limits/plainly.test-data';

const MINUTE = 60_000;
const limit: AttestationLimit = { kind: 'attestation', statement: 'Humidity was kept.', asks: 'humidity', source: cookedMeat65Log.source };
const table: DwellLimit = { ...cookedMeat65Log, longestGapSeconds: 3600 };
/** Warms for an hour, then is read every 20 minutes at one temperature until it ends. */
function cook(minutes: number, fahrenheit: number, more: Partial<CookSeen> = {}): CookSeen {
  const readings = [{ at: 0, temperature: degrees(41, '°F') }];
  for (let at = 60; at <= minutes; at += 20) readings.push({ at: at * MINUTE, temperature: degrees(fahrenheit, '°F') });
  return { readings, endedAt: minutes * MINUTE, tables: [table], ...more };
}
const at = (minutes: number) => new Date(minutes * MINUTE).toISOString();
const timed = { intoOven: at(0), from: at(10) };
const steam = (minutes: number): HumidityKept => ({ how: 'live steam', ...timed, minutes });
const humid = (how: 'humid for a quarter' | 'humid throughout', minutes: number, percent: number): HumidityKept => ({
  how,
  ...timed,
  minutes,
  percent,
});
const hotOven = (value: number): HumidityKept => ({
  how: 'large piece in a hot oven',
  oven: { value, unit: '°F' },
  piece: { value: 12, unit: 'lb' },
});
const judge = (humidity: HumidityKept | undefined, seen: CookSeen | undefined = cook(200, 147), answer = {}) =>
  judgeHumidityKept({ holds: true, seen: '', humidity, ...answer }, limit, seen);

/** FSIS-GD-2021-14, Table 1, p. 26; a cook of 3 h 20 asks for 1 h 40 of steam. */
describe('humidity with the cook it was kept in', () => {
  test.each<[string, HumidityKept, CookSeen | undefined, string]>([
    ['1 h 30 of steam in 3 h 20', steam(90), cook(200, 147), 'missed'],
    ['1 h 40 of it', steam(100), cook(200, 147), 'met'],
    ['a cook that began before its first reading', { ...steam(100), intoOven: at(-20) } as HumidityKept, cook(200, 147), 'missed'],
    ['a sealed oven, and rows below 145 °F', { how: 'sealed oven', ...timed, minutes: 150 }, cook(260, 140), 'missed'],
    ['live steam, 145 °F touched within the thermometer’s error', steam(150), cook(260, 145.5, { error: degrees(1, '°F') }), 'missed'],
    ['live steam and an error in °C', steam(150), cook(260, 147, { error: degrees(0.5, '°C') }), 'met'],
    ['90 % for a quarter beside rows below 145 °F', humid('humid for a quarter', 65, 90), cook(260, 140), 'met'],
    ['one percent less', humid('humid for a quarter', 65, 89.9), cook(260, 140), 'missed'],
    ['90 % throughout, ten minutes of it dry', humid('humid throughout', 180, 95), cook(200, 140), 'missed'],
    ['more humid time than there was', steam(240), cook(200, 147), 'undetermined'],
    ['a cook that is not finished', steam(100), cook(200, 147, { endedAt: undefined }), 'undetermined'],
    ['no cook', steam(100), undefined, 'undetermined'],
    ['a cook without readings', steam(100), cook(200, 147, { readings: [] }), 'undetermined'],
    [
      'a piece of 10 lb at 250 °F',
      { how: 'large piece in a hot oven', oven: { value: 250, unit: '°F' }, piece: { value: 10, unit: 'lb' } },
      undefined,
      'met',
    ],
    [
      'a piece of 4.5 kg at 120 °C',
      { how: 'large piece in a hot oven', oven: { value: 120, unit: '°C' }, piece: { value: 4.5, unit: 'kg' } },
      undefined,
      'missed',
    ],
    [
      'a piece of 9.9 lb',
      { how: 'large piece in a hot oven', oven: { value: 260, unit: '°F' }, piece: { value: 9.9, unit: 'lb' } },
      undefined,
      'missed',
    ],
    ['250 °F read by what may be wrong by 1 °F', hotOven(250), cook(200, 147, { error: degrees(1, '°F') }), 'missed'],
    ['251 °F read by it', hotOven(251), cook(200, 147, { error: degrees(1, '°F') }), 'met'],
    ['572 °F', hotOven(572), undefined, 'met'],
    ['a point forgotten in 250.0 °F', hotOven(2500), undefined, 'undetermined'],
    ['a bag', { how: 'moisture-proof bag' }, undefined, 'met'],
  ])('%s', (_case, kept, seen, kind) => {
    expect(judgeHumidityKept({ holds: true, seen: '', humidity: kept }, limit, seen).kind).toBe(kind);
  });

  test('a row is held at 145 °F, not only touched: steam with a table of colder rows alone is no support', () => {
    const cold = { ...table, rows: table.rows.slice(0, 3) };
    expect(judge(steam(100), cook(200, 147, { tables: [cold] }))).toMatchObject({
      kind: 'missed',
      finding: 'humidity-rows-too-cold',
    });
  });

  test('read in °C, and by the coldest probe whichever comes first', () => {
    const inCelsius = (celsius: number) =>
      cook(200, 147).readings.map((one) => ({ ...one, temperature: degrees(one.at === 0 ? 5 : celsius, '°C') }));
    const error = degrees(0.5, '°C');
    expect(judge(steam(100), cook(200, 147, { readings: inCelsius(64), error })).kind).toBe('met');
    expect(judge(steam(100), cook(200, 147, { readings: inCelsius(63), error })).kind).toBe('missed');
    const two = [62, 64].flatMap((celsius, i) => inCelsius(celsius).map((one) => ({ ...one, probe: 'AB'[i] })));
    expect(judge(steam(100), cook(200, 147, { readings: two })).kind).toBe('missed');
  });

  test('of several probes the coldest piece has the endpoint', () => {
    const two = cook(200, 147).readings.flatMap((one) => [
      { ...one, probe: 'A' },
      { ...one, probe: 'B', temperature: one.at === 0 ? one.temperature : degrees(144, '°F') },
    ]);
    expect(judge(steam(150), cook(200, 147, { readings: two }))).toMatchObject({
      finding: 'humidity-endpoint-too-cold',
      figures: { reached: { value: '144', unit: '°F' } },
    });
  });

  test('says what was kept and seen; a no is missed, no answer and a bare yes are open', () => {
    expect(plainly(judge(steam(100), undefined, { seen: 'oven 2' }))).toMatchObject({
      kept: 'kept-live-steam: 1 h 40 min',
      seen: 'oven 2',
    });
    expect(plainly(judge(humid('humid for a quarter', 60, 92)))).toMatchObject({ kept: 'kept-humid-for-a-quarter: 1 h, 92 %' });
    expect(judge(steam(100), undefined, { holds: false }).kind).toBe('missed');
    expect(judgeHumidityKept(undefined, limit, undefined).kind).toBe('undetermined');
    expect(judge(undefined)).toMatchObject({ finding: 'humidity-not-recorded' });
  });
});
