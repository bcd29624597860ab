import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { aLot, aPoint, entry, findings, made } from './a-reviewed-lot.test-data';

describe('fewer readings than the plan asks for', () => {
  const minutes = (at: number) => new Date(Date.parse(made.at) + at * 60_000).toISOString();
  const aReading = (at: number, reading: Partial<ControlPointOnLot['readings'][number]> = {}) => ({
    ...{ readingId: `r${at}`, controlPointId: 'cook', probe: '', entered: { value: 160, unit: '°F' as const }, judged: [] },
    ...{ ...entry, made: { ...made, at: minutes(at) } },
    ...reading,
  });
  const read = (point: Partial<ControlPointOnLot['controlPoint']>, ...readings: ControlPointOnLot['readings']): Lot => {
    const whole = aPoint({ readings });
    return aLot({ controlPoints: [{ ...whole, controlPoint: { ...whole.controlPoint, ...point } }] });
  };
  const halfHourly = { frequency: { everyMinutes: 30 } };
  const corrected = { amendedBy: 'x' };
  const voided = { amendedBy: 'x', voided: { reason: 'Not ours.', made } };
  const said = { clarifications: [{ clarificationId: 's', word: 'not of the core' as const, reason: 'Air.', made }] };

  test.each<[string, Lot, string[]]>([
    ['as asked', read(halfHourly, aReading(0), aReading(30), aReading(60)), []],
    [
      'two hours without one',
      read(halfHourly, aReading(0), aReading(30), aReading(150)),
      ['Cooking: 3 readings, 2 h at the longest without one, where the plan asks for one at least every 30 min: 3 fewer than it asks.'],
    ],
    [
      'a corrected, a voided and a reading that was not of the core do not count',
      read(halfHourly, aReading(0), aReading(30, corrected), aReading(60, voided), aReading(90, said), aReading(120)),
      ['Cooking: 2 readings, 2 h at the longest without one, where the plan asks for one at least every 30 min: 3 fewer than it asks.'],
    ],
    [
      'what the product lies in does not count',
      read({ ...halfHourly, surroundings: { name: 'air' } }, aReading(0), aReading(30, { probe: 'air' }), aReading(60)),
      ['Cooking: 2 readings, 1 h at the longest without one, where the plan asks for one at least every 30 min: 1 fewer than it asks.'],
    ],
    [
      'one where three are asked',
      read({ frequency: { timesInALot: 3 } }, aReading(0)),
      ['Cooking: 1 reading, where the plan asks for one at least 3 times in a lot: 2 fewer than it asks.'],
    ],
    ['where the plan says it in words alone nothing is known', read({}, aReading(0), aReading(600)), []],
    ['weighings are judged by their sum', read({ takenAs: 'weighings', frequency: { timesInALot: 3 } }, aReading(0)), []],
    [
      'a probe that the plan names and nobody read',
      read({ probes: ['left', 'right'] }, aReading(0, { probe: 'left' })),
      ['Cooking: the plan names right, and nobody read it.'],
    ],
    ['one named probe, and readings that do not name it', read({ probes: ['core'] }, aReading(0)), []],
  ])('%s', (_case, lot, expected) => {
    const about = findings(lot).filter((one) => one.about === 'control-point' && one.kind === 'flagged');
    expect(about.map(({ what }) => what)).toEqual(expected);
    for (const one of about) expect([one.controlPointId, one.blocks, Boolean(one.next)]).toEqual(['cook', false, true]);
  });

  test('of none at all it is said once that nothing was recorded', () => {
    const lot = read(halfHourly);
    const [only, ...others] = findings({
      ...lot,
      controlPoints: lot.controlPoints.map((point) => ({ ...point, stands: 'not-started' as const })),
    });
    expect([only?.what, others]).toEqual(['Cooking: nothing was recorded.', []]);
  });
});
