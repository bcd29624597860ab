import { describe, expect, test } from 'vitest';
import { salmonellaKilled } from '../../limit-sets/fsis-processes';
import { listeria70For2 } from '../../lethality/sets';
import { degrees } from '../../quantity/degrees';
import type { CurveReading } from '../../thermal/curve';
import { judgeCurve } from '../../limits/judge-curve';

const MINUTE = 60_000;
const limit = { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' };
const at = (minutes: number, value: number, unit: '°F' | '°C' = '°F'): CurveReading => ({
  at: minutes * MINUTE,
  temperature: degrees(value, unit),
});
const level = (minutes: number, value: number, unit: '°F' | '°C' = '°F') =>
  Array.from({ length: minutes + 1 }, (_, minute) => at(minute, value, unit));
const judge = (readings: CurveReading[], context = {}) => judgeCurve(readings, limit, { ended: true, ...context });

describe('logs killed', () => {
  // FSIS-GD-2021-14, Table 2: 6.5 log of Salmonella at 140 °F in 12 min; D 1.714 min at 60 °C gives 11.14 min.
  test('twelve minutes at 140 °F are 6.5 log, eleven are not', () => {
    expect(judge(level(12, 140))).toMatchObject({ kind: 'met', measured: expect.stringMatching(/^about 7 log \(Salmonella/) });
    expect(judge(level(11, 140))).toMatchObject({ kind: 'missed', margin: '0.5 log short' });
    expect(judge(level(12, 60, '°C')).kind).toBe('met');
    expect(judge(level(11, 60, '°C')).kind).toBe('missed');
  });

  test('nothing below the floor counts, in either unit', () => {
    expect(judge(level(600, 129.9))).toMatchObject({ kind: 'missed', measured: expect.stringMatching(/^about 0 log/) });
    expect(judge(level(600, 54.3, '°C')).kind).toBe('missed');
  });

  test('without a process authority nothing is met', () => {
    expect(judgeCurve(level(60, 150), salmonellaKilled, { ended: true })).toMatchObject({
      kind: 'undetermined',
      finding: 'limit-unusable',
      figures: { fault: 'Name the process authority that supports it, and where the letter is filed.' },
    });
  });

  test('between two readings the colder end is sure; straight lines are shown and never meet it', () => {
    const rising = [at(0, 120), at(10, 150), at(14, 120)];
    expect(judge(rising)).toMatchObject({
      kind: 'undetermined',
      because: 'The readings are too far apart to be sure of 6.5 log.',
      notes: expect.arrayContaining([expect.stringContaining('By straight lines between the readings: about')]),
    });
  });

  test('over a gap nothing is credited, and it says so', () => {
    expect(judge([at(0, 140), at(16, 140)])).toMatchObject({
      kind: 'undetermined',
      because: 'There is no reading for 16 min of the heat; at most 15 min may lie between two.',
    });
    expect(judge([...level(12, 140), at(60, 140)]).kind).toBe('met');
  });

  test('the error of the thermometer is taken off', () => {
    expect(judge(level(12, 140), { instrumentError: degrees(1, '°F') }).kind).toBe('missed');
    expect(judge(level(12, 141), { instrumentError: degrees(1, '°F') }).kind).toBe('met');
  });

  test('while it cooks it says how long is left at this temperature', () => {
    const running = judge(level(6, 140), { ended: false });
    expect(running).toMatchObject({ kind: 'undetermined', running: { stage: 'lethality', bound: '6.5 log' } });
    expect((running.running?.until ?? 0) / MINUTE).toBeCloseTo(6.5 * 1.714, 1);
    expect(running).toMatchObject({ next: expect.stringMatching(/^Keep heating: about 5 min/) });
    expect(judge([at(0, 100)], { ended: false })).toMatchObject({
      next: 'Keep heating: at this temperature nothing is counted yet.',
      running: { until: undefined },
    });
    const coldest = { ...limit, floor: { '°F': -4000 } };
    expect(judgeCurve([at(0, 40)], coldest, { ended: false }).running).toEqual({ stage: 'lethality', bound: '6.5 log' });
    expect(judge(level(6, 140), { ended: false, now: 30 * MINUTE })).toMatchObject({
      next: expect.stringMatching(/^Read the core now: .* 24 min old/),
    });
  });

  test('a figure of Listeria never stands without its set, and is capped', () => {
    const listeria = { ...limit, set: listeria70For2, log10: 600 };
    expect(judgeCurve(level(30, 75, '°C'), listeria, { ended: true })).toMatchObject({
      measured: '> 12 log (Listeria monocytogenes, 70 °C for 2 min; model estimate)',
      limit: expect.stringContaining('D 0.3333 min at 70 °C, z 7.5 °C'),
    });
  });

  test('no usable reading decides nothing', () => {
    expect(judge([])).toMatchObject({ kind: 'undetermined', finding: 'no-usable-reading' });
  });
});
