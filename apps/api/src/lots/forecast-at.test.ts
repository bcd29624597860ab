import type { ControlPoint } from '@larderbook/contracts';
import { coolingUncured } from '@larderbook/haccp';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandsOf } from './bands-of';
import { forecastAt } from './forecast-at';
import { judgeControlPoint, type PointRecords } from './judge-control-point';
import type { Taken } from './judge-reading';

const minute = 60_000;
const air = 'Air of the chiller';
const plain: ControlPoint = {
  controlPointId: 'chill',
  stepId: 'chilling',
  name: 'Chilling',
  kind: 'critical',
  hazard: 'Growth of spores.',
  takenAs: 'curve',
  limits: [{ limitId: 'cooling', limit: coolingUncured }],
  probes: ['core'],
  monitoring: { what: 'Core.', how: 'Probe.', howOften: 'Often.', who: 'Operator.' },
  correctiveAction: 'Hold the lot.',
  verification: '',
};
const chill: ControlPoint = { ...plain, surroundings: { name: air, setPoint: { value: 34, unit: '°F' } } };

const read = (minutes: number, value: number, probe = 'core'): Taken => ({
  id: `${probe} ${minutes}`,
  probe,
  takenAt: new Date(minutes * minute),
  value,
  unit: '°F',
  answer: null,
  seen: '',
});
const toward = (around: number, tauHours: number, until: number): Taken[] =>
  Array.from({ length: Math.floor(until / 10) + 1 }, (_, i) =>
    read(i * 10, Math.round((around + (140 - around) * Math.exp(-i / 6 / tauHours)) * 10) / 10),
  );

const falls = fc.record({
  tauHours: fc.double({ min: 0.4, max: 5, noNaN: true }),
  around: fc.integer({ min: 28, max: 60 }),
  until: fc.integer({ min: 0, max: 420 }),
  airs: fc.array(fc.record({ at: fc.integer({ min: 0, max: 420 }), value: fc.integer({ min: -30, max: 250 }) })),
  ended: fc.boolean(),
});

test('whatever was read around a core that moves as one can, it only ever adds doubt, and no forecast changes a verdict', () => {
  const states = new Set<string | undefined>();
  fc.assert(
    fc.property(falls, ({ tauHours, around, until, airs, ended }) => {
      const core = toward(around, tauHours, until);
      const clock: Omit<PointRecords, 'readings'> = {
        startAt: new Date(0),
        endedAt: ended ? new Date((until + 1) * minute) : undefined,
        now: new Date((until + 1) * minute),
      };
      const surroundings = airs.map(({ at, value }, i) => ({ ...read(at, value, air), id: `${i}` }));
      const all = [...core, ...surroundings].sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime());
      const alone = judgeControlPoint(plain, { readings: core, ...clock });
      const together = judgeControlPoint(chill, { readings: all, ...clock });
      // A core colder than what was read around it is in doubt; nothing else of a verdict is changed by it.
      const isDoubted = together.judged[0]?.verdict.notes.some(
        (note) => typeof note === 'object' && note.code === 'doubt-colder-than-around',
      );
      if (!isDoubted) expect(together).toEqual(alone);
      if (alone.stands !== 'met') expect(together.stands).not.toBe('met');
      expect(together.stands === 'missed').toBe(alone.stands === 'missed');
      const apart = { readings: core, surroundings, ...clock };
      expect(bandsOf(chill, apart, alone.judged)).toEqual(bandsOf(plain, apart, alone.judged));
      states.add(forecastAt(chill, apart)?.state);
    }),
    { numRuns: 300 },
  );
  expect([...states]).toEqual(expect.arrayContaining(['will miss', 'too early to tell', undefined]));
});

test('a probe of the plan is judged, even if the plan gives its name to the air', () => {
  const confused: ControlPoint = { ...chill, surroundings: { name: 'core' } };
  const readings = toward(34, 1, 60);
  expect(judgeControlPoint(confused, { readings })).toEqual(judgeControlPoint(plain, { readings }));
});

test('only a series has a forecast', () => {
  expect(forecastAt({ ...chill, takenAs: 'value' }, { readings: toward(34, 1, 60) })).toBeUndefined();
});
