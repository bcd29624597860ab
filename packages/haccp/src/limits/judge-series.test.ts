import { describe, expect, test } from 'vitest';
import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import { nitriteComminuted } from '../limit-sets/curing';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { frozenByCentre } from '../limit-sets/fsis-processes';
import { degrees } from '../quantity/degrees';
import { massOf } from '../quantity/weigh';
import { allowingFor } from './curve-context';
import { judgeCurve } from './judge-curve';
import { isSeriesLimit, judgeSeries } from './judge-series';
import type { SeriesLimit } from './limit';
import type { WeightLossLimit } from '../kinds/weight-loss/weight-loss-limit';
import { seriesOf, unitsRead, type ReadValue } from './series-of';

const HOUR = 3_600_000;
const source = { citation: 'Own validation', edition: '', confirmed: true };
const loss: WeightLossLimit = { kind: 'weightLoss', percent: 35, source };
const degreeHours: SeriesLimit = { kind: 'degreeHours', ...degreeHoursFahrenheit };
const read = (hours: number, value: number, unit: string, probe?: string): ReadValue => ({ at: hours * HOUR, value, unit, probe });
const judge = (reads: ReadValue[], limit: SeriesLimit, context = {}) =>
  judgeSeries(seriesOf(reads), [limit], { ended: true, ...context })[0];
const begun = { startAt: 0 };
const hourly = (hours: number, fahrenheit: number) => Array.from({ length: hours + 1 }, (_, hour) => read(hour, fahrenheit, '°F'));

describe('a series against its limits', () => {
  test('curve limits are judged in their order, in one pass, as each by itself', () => {
    const reads = [read(0, 45, '°F'), read(1, 131, '°F'), read(1.05, 158, '°F')];
    const limits = [loss, comeUpWithinSixHours, degreeHours, cookedMeat65Log];
    const verdicts = judgeSeries(seriesOf(reads), limits, { ended: true });
    expect(verdicts.map(({ kind }) => kind)).toEqual(['undetermined', 'met', 'undetermined', 'met']);
    expect(verdicts[3]).toEqual(judgeCurve(seriesOf(reads).temperatures, cookedMeat65Log, { ended: true }));
  });

  // FSIS (2005), p. 164: below 90 °F at most 1200 degree-hours over 60 °F: 20 × 60 h is 1200.
  test('degree-hours take chamber and pH from one series, from a recorded start', () => {
    const chamber = hourly(60, 80);
    const all = [read(0, 5.8, 'pH'), ...chamber, read(60, 5.3, 'pH')];
    expect(judge(all, degreeHours, begun)).toMatchObject({ kind: 'met', notes: [] });
    expect(judge(all, degreeHours)).toMatchObject({
      kind: 'undetermined',
      finding: 'fermentation-no-start',
    });
    expect(judge([...hourly(61, 80), read(61, 5.3, 'pH')], degreeHours)?.kind).toBe('missed');
    expect(judge([...chamber, read(60, 5.31, 'pH')], degreeHours)?.kind).toBe('undetermined');
    expect(judge([], degreeHours)).toMatchObject({ kind: 'undetermined' });
  });

  test('pH is read of each piece by itself', () => {
    const pieces = [read(30, 5.6, 'pH', 'B'), read(60, 5.3, 'pH', 'A')];
    expect(judge([...hourly(60, 80), ...pieces], degreeHours)?.kind).toBe('undetermined');
    expect(judge([...hourly(60, 80), ...pieces, read(60, 5.3, 'pH', 'B')], degreeHours, begun)?.kind).toBe('met');
  });

  test('a freezer is read from when the meat went in', () => {
    const air: SeriesLimit = { ...frozenByCentre, read: { what: 'freezer', thickness: { value: 6, unit: 'in' } } };
    expect(judge(hourly(144, -20), air, { startAt: 0 })?.kind).toBe('met');
    expect(judge(hourly(144, -20), air, { startAt: 100 * HOUR })?.kind).toBe('missed');
    expect(judge(hourly(144, -20), air)?.kind).toBe('undetermined');
  });

  test('of several probes in the chamber the warmest governs', () => {
    const two = hourly(60, 80).flatMap((one) => [
      { ...one, probe: 'top' },
      { ...one, value: 75, probe: 'floor' },
    ]);
    expect(judge([...two, read(60, 5.3, 'pH')], degreeHours, begun)).toMatchObject({ kind: 'met', probe: 'top' });
  });

  test('a chamber too cold to be one is left out as it was read, however wrong its thermometer may be', () => {
    const cold = [...hourly(60, 70), read(20, 43, '°F'), read(60, 5.2, 'pH')].filter(({ at, value }) => at !== 20 * HOUR || value === 43);
    const by = (hundredths: number) => judge(cold, degreeHours, { ...begun, instrumentError: { hundredths, unit: '°F' } });
    const left = expect.objectContaining({
      code: 'chamber-too-cold-in-fahrenheit',
      figures: expect.objectContaining({ count: 1, value: { value: '43', unit: '°F' } }) as unknown,
    }) as unknown;
    expect([by(149), by(200)].map((verdict) => verdict?.notes[0])).toEqual([...[left, left]]);
  });

  test('a reading as hot as any can be stays against the lot, however wrong its thermometer may be', () => {
    const thawed = hourly(12, -32).map((one) => (one.at === 6 * HOUR ? { ...one, value: 571.5 } : one));
    const by = (hundredths: number) => judge(thawed, frozenByCentre, { instrumentError: { hundredths, unit: '°F' } })?.kind;
    expect([by(0), by(100)]).toEqual(['missed', 'missed']);
  });

  test('the error of the pH meter delays the pH, and is said', () => {
    const reads = [...hourly(60, 80), read(50, 5.3, 'pH'), read(60, 5.25, 'pH')];
    const acidError = { thousandths: 50 };
    const allowed = { code: 'allowed-for-pH', figures: { error: { value: '0.05', unit: 'ratio' } } };
    expect(judge(reads, degreeHours, { ...begun, acidError })).toMatchObject({
      kind: 'met',
      figures: { most: { value: '1200', unit: '°F·h' } },
      notes: [allowed],
    });
    const wider = { ...begun, acidError: { thousandths: 51 } };
    expect(judge(reads, degreeHours, wider)?.kind).toBe('undetermined');
    const sourInB = [5.8, 9.99].map((value) => read(60, value, 'pH', 'B'));
    expect(judge([...reads, ...sourInB], degreeHours, { ...begun, acidError })).toMatchObject({
      kind: 'undetermined',
      notes: [{ code: 'acid-not-shown', figures: { piece: 'B' } }, allowed],
    });
    expect(judge(reads, degreeHours, { ...begun, acidError: { thousandths: 0 } })?.kind).toBe('met');
  });

  test('the error of the scale counts against the loss', () => {
    const reads = [read(0, 1000, 'g'), read(400, 650, 'g')];
    expect(judge(reads, loss)?.kind).toBe('met');
    expect(judge(reads, loss, { scaleError: massOf({ value: 0.5, unit: 'g' }) })).toMatchObject({
      kind: 'missed',
      figures: { lost: { value: '34.9', unit: '%' } },
      notes: [{ code: 'weighed-to-the-worse', figures: { error: { value: '0.5', unit: 'g' } } }],
    });
  });

  test('the errors a plan states are those a series is judged with', () => {
    const mass = { thousandths: 500, unit: 'g' } as const;
    const errors = { temperature: degrees(1, '°F'), pH: { thousandths: 50 }, mass };
    expect(allowingFor(errors)).toEqual({
      instrumentError: errors.temperature,
      acidError: errors.pH,
      scaleError: massOf({ value: 0.5, unit: 'g' }),
    });
    expect(allowingFor()).toEqual({ scaleError: 0n });
  });

  test('the error of a thermometer counts against chamber and freezer', () => {
    const chamber = [...hourly(60, 80), read(60, 5.3, 'pH')];
    const warm = { instrumentError: degrees(0.1, '°F') };
    expect(judge(chamber, degreeHours, warm)?.kind).toBe('missed');
    const frozen = hourly(63, -10);
    expect(judge(frozen, frozenByCentre)).toMatchObject({ kind: 'met', finding: 'freezing-held' });
    expect(judge([...frozen, read(64, NaN, '°C')], frozenByCentre, { instrumentError: degrees(0.1, '°C') })?.kind).toBe('missed');
    const inCelsius = Array.from({ length: 64 }, (_, hour) => read(hour, -23.3, '°C'));
    expect(judge(inCelsius, frozenByCentre)?.kind).toBe('met');
    expect(judge(inCelsius, frozenByCentre, { instrumentError: degrees(0.1, '°C') })?.kind).toBe('missed');
    const noFigure = { instrumentError: { hundredths: NaN, unit: '°C' as const } };
    expect(judge(frozen, frozenByCentre, noFigure)).toMatchObject({ kind: 'undetermined', finding: 'error-unusable' });
  });

  test('of marked pieces the one that has lost least governs', () => {
    const pieces = [read(0, 1, 'kg', 'A'), read(0, 1000, 'g', 'B'), read(600, 0.65, 'kg', 'A'), read(600, 660, 'g', 'B')];
    expect(judge(pieces, loss)).toMatchObject({
      kind: 'missed',
      figures: { lost: { value: '34', unit: '%' } },
      probe: 'B',
      notes: [{ code: 'one-governs', figures: { probe: 'B', count: 2 } }],
    });
    const nameless = [...pieces, read(0, 1, 'kg'), read(600, 0.9, 'kg')];
    expect(judge(nameless, loss)?.notes[0]).toEqual({ code: 'nameless-governs', figures: { count: 3 } });
    expect(judge([read(0, 1, 'kg'), read(600, 0.65, 'kg')], loss)?.kind).toBe('met');
    expect(judge([], loss)).toMatchObject({ kind: 'undetermined', finding: 'loss-no-start' });
  });

  test('while pieces dry the day is forecast from their weighings, as advice', () => {
    const day = 24;
    const drying = [
      [0, 1],
      [4, 0.886],
      [8, 0.805],
      [12, 0.747],
      [16, 0.705],
    ] as const;
    const soFar = (count: number) => drying.slice(0, count).map(([days, kg]) => read(days * day, kg, 'kg', 'A'));
    expect(judge(soFar(5), loss, { ended: false })).toMatchObject({
      kind: 'undetermined',
      notes: [{ code: 'loss-arrival', figures: { asked: { value: '35', unit: '%' }, best: { unit: 'days' }, latest: { unit: 'days' } } }],
    });
    expect(judge(soFar(2), loss, { ended: false })?.notes).toEqual([{ code: 'loss-arrival-too-early' }]);
    expect(judge(soFar(5), { ...loss, percent: 0 }, { ended: false })?.notes).toEqual([]);
    expect(judge(soFar(5), loss)?.notes).toEqual([]);
  });

  test('where pieces dry ever more slowly, that the loss may never be there is said', () => {
    const slowing = [1, 0.854, 0.779, 0.741, 0.721, 0.711].map((kg, i) => read(i * 4 * 24, kg, 'kg', 'A'));
    expect(judge(slowing, loss, { ended: false })?.notes).toEqual([
      { code: 'loss-may-never-be-there', figures: { asked: { value: '35', unit: '%' } } },
    ]);
  });

  test('a number finer than can be counted is left out and said', () => {
    expect(judge([read(0, 1.00001, 'kg'), read(1, 1, 'kg'), read(9, 0.6, 'kg')], loss)?.notes).toEqual([
      { code: 'weighings-left-out', figures: { count: 1 } },
    ]);
    expect(seriesOf([read(0, 5.12345, 'pH'), read(0, 1e-9, '°C')])).toMatchObject({
      acid: [{ pH: { thousandths: NaN } }],
      temperatures: [{ temperature: { hundredths: NaN } }],
    });
  });
});

test('what is read follows from the limits', () => {
  const range = (measured: 'temperature' | 'percent' | 'pH') => ({ kind: 'range', measured, max: 5, source }) as const;
  expect(unitsRead([range('temperature'), cookedMeat65Log])).toEqual(['°F', '°C']);
  expect(unitsRead([range('percent')])).toEqual(['%']);
  expect(unitsRead([range('pH')])).toEqual(['pH']);
  expect(unitsRead([degreeHours])).toEqual(['°F', '°C', 'pH']);
  expect(unitsRead([loss])).toEqual(['kg', 'g', 'lb', 'oz']);
  expect(unitsRead([{ kind: 'figure', of: 'fat', unit: '%', max: 30_000, source }])).toEqual(['%']);
  expect(unitsRead([nitriteComminuted])).toEqual([]);
  expect(unitsRead([{ kind: 'attestation', statement: 'The label is right.', source }])).toEqual([]);
  expect(isSeriesLimit(range('temperature'))).toBe(false);
});

test('as many readings as may be judged make no kind of limit throw', () => {
  const temperatures = Array.from({ length: 200_000 }, (_, second) => ({
    at: second * 1000,
    temperature: { hundredths: 8000, unit: '°F' as const },
  }));
  const series = { temperatures, acid: [], weights: [] };
  const verdicts = judgeSeries(series, [degreeHours, frozenByCentre], { ended: true });
  expect(verdicts.map(({ kind }) => kind)).toEqual(['undetermined', 'missed']);
});
