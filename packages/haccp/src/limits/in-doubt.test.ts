import { expect, test } from 'vitest';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { judgeSeries } from './judge-series';
import { seriesOf, type ReadValue } from './series-of';
import type { Verdict } from './verdict';

const MINUTE = 60_000;
type Read = Pick<ReadValue, 'word' | 'arrivedAt'>;
const chill = (points: [minutes: number, value: number, read?: Read][], now?: number): Verdict | undefined => {
  const reads = points.map(([minutes, value, read]): ReadValue => ({ at: minutes * MINUTE, value, unit: '°F', ...read }));
  return judgeSeries(seriesOf(reads), [coolingUncured], { ended: true, now })[0];
};

/** 29 min 55 s are left of each by the figures alone. */
test.each<[why: string, verdict: Verdict | undefined]>([
  [
    'a reading moved faster than the core can',
    chill([
      [0, 140],
      [1, 129],
      [2, 60],
      [60.083, 79],
      [200, 60],
      [270, 39],
    ]),
  ],
  [
    'a reading is of the future',
    chill(
      [
        [0, 140],
        [60.083, 79],
        [200, 60],
        [270, 39],
      ],
      30 * MINUTE,
    ),
  ],
  [
    'the readings lie too far apart',
    chill([
      [0, 140],
      [60.083, 79],
      [340, 39],
    ]),
  ],
])('no margin stands beside undetermined: %s', (_why, verdict) => {
  expect(verdict).toMatchObject({ kind: 'undetermined' });
  expect(verdict?.figures).not.toHaveProperty('spare');
});

test('beside what is met it stands', () => {
  expect(
    chill([
      [0, 140],
      [60.083, 79],
      [200, 60],
      [270, 39],
    ]),
  ).toMatchObject({
    kind: 'met',
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '3604980', unit: 'ms' },
      spare: { value: '1795020', unit: 'ms' },
    },
  });
});
