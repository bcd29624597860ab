import { expect, test } from 'vitest';
import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { atMostOneLogGrown, frozenByCentre, salmonellaKilled } from '../limit-sets/fsis-processes';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import type { CurveContext } from './curve-context';
import type { SeriesLimit } from './limit';
import type { ReadValue } from './series-of';
import { MINUTE, type Point, read, judge, right } from './judge-by-clock.test-data';

const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
const { source } = cookedMeat65Log;
/** One series for every kind of limit that meets it. */
const kinds: [kind: string, limit: SeriesLimit, reads: ReadValue[], context?: Partial<CurveContext>][] = [
  [
    'a hold',
    cookedMeat65Log,
    read(
      [
        [0, 140],
        [5, 150],
        [10, 150],
        [14, 150],
      ],
      '°F',
    ),
  ],
  [
    'a chill',
    coolingUncured,
    read(
      [
        [0, 140],
        [80, 79],
        [200, 60],
        [300, 39],
      ],
      '°F',
    ),
  ],
  [
    'a come-up',
    comeUpWithinSixHours,
    read(
      [
        [0, 45],
        [60, 80],
        [118, 110],
        [178, 140],
      ],
      '°F',
    ),
  ],
  [
    'logs killed',
    { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' },
    read(
      [
        [0, 140],
        [5, 150],
        [10, 150],
        [19, 150],
      ],
      '°F',
    ),
  ],
  [
    'growth',
    atMostOneLogGrown,
    read(
      [
        [0, 140],
        [29, 90],
        [60, 50],
        [90, 38],
      ],
      '°F',
    ),
  ],
  [
    'degree-hours',
    { kind: 'degreeHours', ...degreeHoursFahrenheit },
    [
      ...read(
        [
          [0, 72],
          [50, 72],
          [110, 72],
          [119, 72],
        ],
        '°F',
      ),
      ...read([[119, 5.2]], 'pH'),
    ],
    { startAt: 0 },
  ],
  [
    'loss of weight',
    { kind: 'weightLoss', percent: 35, source },
    read(
      [
        [0, 1000],
        [3000, 900],
        [5990, 700],
        [9000, 640],
      ],
      'g',
    ),
  ],
  [
    'frozen time',
    frozenByCentre,
    read(
      Array.from({ length: 62 }, (_, i): Point => [i * 29, -31]),
      '°F',
    ),
  ],
];
const last = (reads: readonly ReadValue[], kept: Partial<ReadValue>): ReadValue[] =>
  reads.map((one, i) => (i === reads.length - 1 ? { ...one, ...kept } : one));
const endOf = (reads: readonly ReadValue[]): number => reads.at(-1)?.at ?? 0;

test.each(kinds)('%s: met by a sound clock', (_kind, limit, reads, context) => {
  expect(judge(reads, limit, context)?.kind).toBe('met');
  expect(judge(reads, limit, { ...context, now: endOf(reads) - 2 * MINUTE })?.kind).toBe('met');
});

test.each(kinds)('%s: not met by a reading that is yet to come', (_kind, limit, reads, context) => {
  const known = { ...context, now: endOf(reads) - 2 * MINUTE - 1 };
  expect(judge(reads, limit, known)).toMatchObject({ kind: 'undetermined', finding: 'clock-in-doubt' });
  expect(
    judge(
      reads.map((one) => ({ ...one, ...right })),
      limit,
      known,
    )?.kind,
  ).toBe('met');
});

test.each(kinds)('%s: not met by a reading dated later than it was kept', (_kind, limit, reads, context) => {
  const asRead = reads.map((one) => ({ ...one, arrivedAt: one.at }));
  const keptAt = (arrivedAt: number, word?: 'time is right') => judge(last(asRead, { arrivedAt, word }), limit, context)?.kind;
  expect(keptAt(endOf(reads) - 2 * MINUTE)).toBe('met');
  expect(keptAt(endOf(reads) - 2 * MINUTE - 1)).toBe('undetermined');
  expect(keptAt(endOf(reads) - 2 * MINUTE - 1, 'time is right')).toBe('met');
});

test.each(kinds)('%s: not met by readings that came out of order', (_kind, limit, reads, context) => {
  const isLast = (one: ReadValue) => one === reads[reads.length - 1];
  const doubted = limit.kind === 'degreeHours' ? reads.filter(({ unit }) => unit !== 'pH') : reads;
  const late = doubted[1] as ReadValue;
  const asTheyCame = [...reads.filter((one) => one !== late && !isLast(one)), ...reads.filter(isLast), late];
  expect(judge(asTheyCame, limit, context)?.kind).toBe('undetermined');
  // The same told by when each was kept, in any order.
  const told = reads.map((one) => ({ ...one, arrivedAt: one === late ? 20 * DAY : one.at }));
  const isDays = endOf(reads) - late.at > DAY;
  expect(judge(told, limit, context)).toMatchObject({
    ...{ kind: 'undetermined', finding: 'clock-in-doubt' },
    figures: { doubt: { code: isDays ? 'clock-clock-reset' : 'clock-out-of-order' } },
  });
  const settled = told.map((one) => (one.arrivedAt === 20 * DAY ? { ...one, ...right } : one));
  expect(judge(settled, limit, context)?.kind).toBe('met');
  expect(judge(settled.toReversed(), limit, context)?.kind).toBe('met');
});

test.each(kinds)('%s: what a person set aside is judged by nobody', (_kind, limit, reads, context) => {
  const none = reads.map((one) => ({ ...one, word: 'not of the core' as const }));
  expect(judge(none, limit, context)?.kind).toBe('undetermined');
  const odd = { ...(reads[0] as ReadValue), at: 100 * DAY, word: 'not of the core' as const };
  const verdict = judge([...reads, odd], limit, { ...context, now: endOf(reads) });
  expect(verdict?.kind).toBe('met');
  expect(verdict?.notes).toContainEqual({ code: 'set-aside', figures: { count: 1 } });
});

test('now is minute 30, and a chill is done at minute 300', () => {
  const chill = read(
    [
      [0, 140],
      [80, 79],
      [300, 39],
    ],
    '°F',
  );
  expect(judge(chill, coolingUncured, { now: 30 * MINUTE })?.kind).toBe('undetermined');
  expect(judge(chill, coolingUncured, { now: 300 * MINUTE })?.kind).toBe('met');
});
