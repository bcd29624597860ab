import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import { describe, expect, test } from 'vitest';
import { codesOf } from '../platform/codes-of.test-data';
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
  const lasting = (count: number) => ({ value: String(count * 60_000), unit: 'ms' });
  const tooFew = ({ longest, ...figures }: { count: number; missing: number; longest: number }) => ({
    code: 'too-few-in-time',
    figures: { point: 'Cooking', ...figures, longest: lasting(longest), every: lasting(30) },
  });
  const corrected = { amendedBy: 'x' };
  const voided = { amendedBy: 'x', voided: { reason: 'Not ours.', made } };
  const said = { clarifications: [{ clarificationId: 's', word: 'not of the core' as const, reason: 'Air.', made }] };

  test.each<[string, Lot, object[]]>([
    ['as asked', read(halfHourly, aReading(0), aReading(30), aReading(60)), []],
    ['two hours without one', read(halfHourly, aReading(0), aReading(30), aReading(150)), [tooFew({ count: 3, missing: 3, longest: 120 })]],
    [
      'a corrected, a voided and a reading that was not of the core do not count',
      read(halfHourly, aReading(0), aReading(30, corrected), aReading(60, voided), aReading(90, said), aReading(120)),
      [tooFew({ count: 2, missing: 3, longest: 120 })],
    ],
    [
      'what the product lies in does not count',
      read({ ...halfHourly, surroundings: { name: 'air' } }, aReading(0), aReading(30, { probe: 'air' }), aReading(60)),
      [tooFew({ count: 2, missing: 1, longest: 60 })],
    ],
    [
      'one where three are asked',
      read({ frequency: { timesInALot: 3 } }, aReading(0)),
      [{ code: 'too-few-in-lot', figures: { point: 'Cooking', count: 1, missing: 2, times: 3 } }],
    ],
    ['where the plan says it in words alone nothing is known', read({}, aReading(0), aReading(600)), []],
    ['weighings are judged by their sum', read({ takenAs: 'weighings', frequency: { timesInALot: 3 } }, aReading(0)), []],
    [
      'a probe that the plan names and nobody read',
      read({ probes: ['left', 'right'] }, aReading(0, { probe: 'left' })),
      [{ code: 'probes-not-read', figures: { point: 'Cooking', probes: ['right'] } }],
    ],
    ['one named probe, and readings that do not name it', read({ probes: ['core'] }, aReading(0)), []],
  ])('%s', (_case, lot, expected) => {
    const about = findings(lot).filter((one) => one.about === 'control-point' && one.kind === 'flagged');
    expect(about.flatMap(({ what }) => what)).toEqual(expected);
    for (const one of about) expect([one.controlPointId, one.blocks, one.next]).toEqual(['cook', false, [{ code: 'look-for-readings' }]]);
  });

  test('of none at all it is said once that nothing was recorded', () => {
    const lot = read(halfHourly);
    const [only, ...others] = findings({
      ...lot,
      controlPoints: lot.controlPoints.map((point) => ({ ...point, stands: 'not-started' as const })),
    });
    expect([codesOf(only?.what), others]).toEqual([['point-not-recorded'], []]);
  });
});
