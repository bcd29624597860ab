import { describe, expect, test } from 'vitest';
import { salmonellaKilled } from '../../limit-sets/fsis-processes';
import { listeria70For2 } from '../../lethality/sets';
import { degrees } from '../../quantity/degrees';
import type { CurveReading } from '../../thermal/curve';
import { judgeCurve } from '../../limits/judge-curve';
import { plainly } from '../../limits/plainly.test-data';

const MINUTE = 60_000;
const limit = { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' };
const at = (minutes: number, value: number, unit: '°F' | '°C' = '°F'): CurveReading => ({
  at: minutes * MINUTE,
  temperature: degrees(value, unit),
});
const level = (minutes: number, value: number, unit: '°F' | '°C' = '°F') =>
  Array.from({ length: minutes + 1 }, (_, minute) => at(minute, value, unit));
const judge = (readings: CurveReading[], context = {}) => judgeCurve(readings, limit, { ended: true, ...context });
const found = (...judged: Parameters<typeof judge>) => plainly(judge(...judged));

describe('logs killed', () => {
  // FSIS-GD-2021-14, Table 2: 6.5 log of Salmonella at 140 °F in 12 min; D 1.714 min at 60 °C gives 11.14 min.
  test('twelve minutes at 140 °F are 6.5 log, eleven are not', () => {
    expect(found(level(12, 140))).toMatchObject({
      kind: 'met',
      kill: expect.stringMatching(/^killed-about: 7 log10, set-salmonella-meat-table, confirmed/) as string,
    });
    expect(found(level(11, 140))).toMatchObject({
      ...{ kind: 'missed', finding: 'lethality-ended', short: '0.5 log10', hottest: '140 °F' },
    });
    expect(judge(level(12, 60, '°C')).kind).toBe('met');
    expect(judge(level(11, 60, '°C')).kind).toBe('missed');
  });

  test('nothing below the floor counts, in either unit', () => {
    expect(found(level(600, 129.9))).toMatchObject({ kind: 'missed', kill: expect.stringMatching(/^killed-about: 0 log10/) as string });
    expect(judge(level(600, 54.3, '°C')).kind).toBe('missed');
  });

  test('without a process authority nothing is met', () => {
    expect(judgeCurve(level(60, 150), salmonellaKilled, { ended: true })).toMatchObject({
      kind: 'undetermined',
      finding: 'limit-unusable',
      figures: { fault: { code: 'kill-authority-missing' } },
    });
  });

  test('between two readings the colder end is sure; straight lines are shown and never meet it', () => {
    const rising = [at(0, 120), at(10, 150), at(14, 120)];
    expect(judge(rising)).toMatchObject({
      kind: 'undetermined',
      finding: 'lethality-not-sure',
      notes: expect.arrayContaining([expect.objectContaining({ code: 'lethality-straight' })]),
    });
  });

  test('over a gap nothing is credited, and it says so', () => {
    expect(found([at(0, 140), at(16, 140)])).toMatchObject({
      ...{ kind: 'undetermined', finding: 'lethality-gap', gap: '16 min', tolerated: '15 min' },
    });
    expect(judge([...level(12, 140), at(60, 140)]).kind).toBe('met');
  });

  test('the error of the thermometer is taken off', () => {
    expect(judge(level(12, 140), { instrumentError: degrees(1, '°F') }).kind).toBe('missed');
    expect(judge(level(12, 141), { instrumentError: degrees(1, '°F') }).kind).toBe('met');
  });

  test('while it cooks it says how long is left at this temperature', () => {
    const target = { target: { value: '6.5', unit: 'log10' } };
    const running = judge(level(6, 140), { ended: false });
    expect(running).toMatchObject({ kind: 'undetermined', running: { code: 'lethality', figures: target } });
    expect((running.running?.until ?? 0) / MINUTE).toBeCloseTo(6.5 * 1.714, 1);
    expect(plainly(running)).toMatchObject({ finding: 'lethality-running', left: '5 min' });
    expect(found([...level(11, 140), at(11.1, 140)], { ended: false })).toMatchObject({ soon: '1' });
    const cold = judge([at(0, 100)], { ended: false });
    expect(cold).toMatchObject({ finding: 'lethality-running', running: { until: undefined } });
    expect(cold.figures).not.toHaveProperty('left');
    const coldest = { ...limit, floor: { '°F': -4000 } };
    expect(judgeCurve([at(0, 40)], coldest, { ended: false }).running).toEqual({ code: 'lethality', figures: target });
    expect(found(level(6, 140), { ended: false, now: 30 * MINUTE })).toMatchObject({ finding: 'lethality-running', age: '24 min' });
  });

  test('a figure of Listeria never stands without its set, and is capped', () => {
    const listeria = { ...limit, set: listeria70For2, log10: 600 };
    expect(plainly(judgeCurve(level(30, 75, '°C'), listeria, { ended: true }))).toMatchObject({
      kill: 'killed-more-than: 12 log10, set-listeria-70-for-2, confirmed',
    });
    const unconfirmed = { ...listeria, set: { ...listeria70For2, source: { ...listeria70For2.source, confirmed: false } } };
    expect(plainly(judgeCurve(level(30, 75, '°C'), unconfirmed, { ended: true }))).toMatchObject({
      kill: expect.stringMatching(/^killed-more-than: .*, unconfirmed$/) as string,
    });
  });

  test('no usable reading decides nothing', () => {
    expect(judge([])).toMatchObject({ kind: 'undetermined', finding: 'no-usable-reading' });
  });
});
