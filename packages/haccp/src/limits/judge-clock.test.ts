import { describe, expect, test } from 'vitest';
import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { atMostOneLogGrown, frozenByCentre, salmonellaKilled } from '../limit-sets/fsis-processes';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import type { AsKept } from '../thermal/instant';
import type { CurveContext } from './curve-context';
import { addReading, beginCurve, judgeSoFar } from './judge-curve-so-far';
import { judgeSeries } from './judge-series';
import type { SeriesLimit } from './limit';
import { seriesOf, type ReadValue } from './series-of';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
const { source } = cookedMeat65Log;

type Point = [minutes: number, value: number, kept?: AsKept & { unit?: string }];
const read = (points: readonly Point[], unit: string): ReadValue[] =>
  points.map(([minutes, value, kept]) => ({ at: minutes * MINUTE, value, unit, ...kept }));
const judge = (reads: readonly ReadValue[], limit: SeriesLimit, context: Partial<CurveContext> = {}) =>
  judgeSeries(seriesOf(reads), [limit], { ended: true, ...context })[0];
const right = { word: 'time is right' } as const;

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

test('a clock set back by an hour, or forward amid even steps, or lost for days meets nothing', () => {
  const by = (points: Point[]) => judge(read(points, '°F'), cookedMeat65Log);
  const back = by([
    [0, 150],
    [5, 150],
    [10, 150],
    [-45, 150],
  ]);
  expect(back).toMatchObject({ kind: 'undetermined', finding: 'clock-in-doubt', figures: { doubt: { code: 'clock-an-hour-off' } } });
  expect(
    by([
      [0, 150],
      [5, 150],
      [10, 150],
      [15, 150],
      [80, 150],
    ])?.kind,
  ).toBe('undetermined');
  expect(
    by([
      [0, 150],
      [5, 150],
      [10, 150],
      [15, 150],
      [80, 150, right],
      [85, 150],
    ])?.kind,
  ).toBe('met');
  expect(
    by([
      [2000, 150],
      [2005, 150],
      [0, 150],
    ]),
  ).toMatchObject({ kind: 'undetermined', finding: 'clock-in-doubt', figures: { doubt: { code: 'clock-clock-reset' } } });
});

describe('an hour more than two even steps', () => {
  const kept = (points: Point[], late: (minutes: number) => number | undefined) =>
    judge(
      read(
        points.map(([at, value, more]): Point => {
          const arrived = late(at);
          return [at, value, { ...more, arrivedAt: arrived === undefined ? undefined : arrived * MINUTE }];
        }),
        '°F',
      ),
      cookedMeat65Log,
    )?.kind;
  const unknown = () => undefined;
  const fiveAndHour: Point[] = [
    [0, 150],
    [5, 150],
    [10, 150],
    [75, 150],
  ];

  test('is doubt where all were kept later', () => {
    expect(kept(fiveAndHour, () => 90)).toBe('undetermined');
    expect(
      kept(
        [
          [0, 150],
          [5, 150],
          [10.9, 150],
          [76, 150],
        ],
        () => 90,
      ),
    ).toBe('undetermined');
    expect(
      kept(
        [
          [0, 150],
          [5, 150],
          [10, 150],
          [75, 150, right],
        ],
        () => 90,
      ),
    ).toBe('met');
  });

  test('is a pause where nothing says when they were kept: a curve without a lot, typed by hand', () => {
    expect(kept(fiveAndHour, unknown)).toBe('met');
  });

  test('is a pause where both readings were kept at once: the clock that kept them saw it too', () => {
    expect(kept(fiveAndHour, (at) => at + 1)).toBe('met');
    expect(kept(fiveAndHour, (at) => (at === 75 ? 75 : at + 9))).toBe('undetermined');
    expect(kept(fiveAndHour, (at) => (at === 75 ? 84 : at))).toBe('undetermined');
  });

  test('is doubt after a logger’s steps, however it was kept; not after those of a hand', () => {
    const byLogger: Point[] = [
      [0, 150],
      [5, 150],
      [10, 150],
      [15, 150],
      [80, 150],
    ];
    expect(kept(byLogger, (at) => at)).toBe('undetermined');
    const byHand: Point[] = [
      [0, 150],
      [5.1, 150],
      [10, 150],
      [15.2, 150],
      [80.2, 150],
    ];
    expect(kept(byHand, (at) => at)).toBe('met');
    expect(kept(byHand, () => 90)).toBe('undetermined');
    expect(kept(byLogger, unknown)).toBe('undetermined');
  });

  test.each<[string, Point[]]>([
    [
      'a pause of an hour and a little more',
      [
        [0, 150],
        [5, 150],
        [10, 150],
        [77, 150],
      ],
    ],
    [
      'one step before it',
      [
        [0, 150],
        [5, 150],
        [70, 150],
      ],
    ],
    [
      'uneven steps before it',
      [
        [0, 150],
        [5, 150],
        [12, 150],
        [79, 150],
      ],
    ],
    [
      'hourly readings of which one was left out',
      [
        [0, 150],
        [60, 150],
        [120, 150],
        [125, 150],
        [185, 150],
        [305, 150],
      ],
    ],
  ])('%s is no such step', (_case, points) => {
    expect(kept(points, () => 400)).toBe('met');
  });
});

test('two readings of one minute that were sent in the other order raise no doubt; of more than a minute they do', () => {
  const sent = (...seconds: number[]) =>
    judge(
      read([...[0, 300, 600].map((one): Point => [one / 60, 150]), ...seconds.map((one): Point => [one / 60, 150])], '°F'),
      cookedMeat65Log,
    );
  expect(sent(840, 800)?.kind).toBe('met');
  expect(sent(840, 780)?.kind).toBe('met');
  expect(sent(840, 779)).toMatchObject({
    kind: 'undetermined',
    finding: 'clock-in-doubt',
    figures: { doubt: { code: 'clock-out-of-order' } },
  });
  // Against the latest that came, so that many small steps back are not let pass.
  expect(sent(840, 800, 770)?.kind).toBe('undetermined');
  expect(sent(840, 800, 900)?.kind).toBe('met');
});

test('kept an hour after its own time, where the one before was kept at once: a clock that was set back', () => {
  // 0:150 90:120 200:79 and so on as they were; from 200 on the clock shows an hour less, and the chill an hour less.
  const at = (minutes: number, value: number, kept = minutes): Point => [minutes, value, { arrivedAt: kept * MINUTE }];
  const chill = (points: Point[]) => judge(read(points, '°F'), coolingUncured);
  const asRead = [at(0, 150), at(60, 131), at(200, 79), at(400, 39)];
  const back = [at(0, 150), at(60, 131), at(140, 79, 200), at(340, 39, 400)];
  expect(chill(asRead)?.kind).toBe('missed');
  expect(chill(back)).toMatchObject({ kind: 'undetermined', finding: 'clock-in-doubt', figures: { doubt: { code: 'clock-an-hour-off' } } });
  // Written down late, but not by an hour; or all of it by an hour, so that no step is wrong; or a person says so.
  expect(chill([at(0, 150), at(60, 131), at(140, 79, 170), at(340, 39, 400)])?.kind).toBe('met');
  expect(chill([at(0, 150, 60), at(60, 131, 120), at(140, 79, 200), at(340, 39, 400)])?.kind).toBe('met');
  const said = back.map(([minutes, value, kept], i): Point => [minutes, value, i === 2 ? { ...kept, ...right } : kept]);
  expect(chill(said)?.kind).toBe('met');
});

test('kept at once, where the one before was kept an hour after its own time: a clock that was set forward', () => {
  const at = (minutes: number, value: number, kept = minutes): Point => [minutes, value, { arrivedAt: kept * MINUTE }];
  const hold = (points: Point[]) => judge(read(points, '°F'), cookedMeat65Log);
  // In truth from minute 60 to 62 to 68; by its clock, which was an hour slow, from 0 to 2 to 68.
  expect(hold([at(0, 150, 60), at(2, 150, 62), at(68, 150)])).toMatchObject({
    kind: 'undetermined',
    finding: 'clock-in-doubt',
    figures: { doubt: { code: 'clock-an-hour-off' } },
  });
  // Written down late and kept together with the next one; or late by something else than an hour.
  expect(hold([at(0, 130, 60), at(60, 150), at(64, 150)])?.kind).toBe('met');
  expect(hold([at(0, 150, 50), at(2, 150, 52), at(68, 150)])?.kind).toBe('met');
  expect(hold([at(0, 150, 60), at(2, 150, 62), at(68, 150, 80)])?.kind).toBe('met');
});

test('a reading that is not kept yet comes last, and a correction stands where the first one stood', () => {
  const corrected = read(
    [
      [0, 140, { arrivedAt: 0 }],
      [5, 150, { arrivedAt: 5 * MINUTE }],
      [9, 150],
    ],
    '°F',
  );
  expect(judge(corrected, cookedMeat65Log)?.kind).toBe('met');
});

test('of a reading of the future that came late, one reason is said', () => {
  const both = read(
    [
      [0, 150, { arrivedAt: 0 }],
      [9, 150, { arrivedAt: 0 }],
    ],
    '°F',
  );
  const verdict = judge(both, cookedMeat65Log, { now: 0 });
  expect(verdict?.notes.filter((note) => typeof note === 'object' && note.code === 'clock-in-the-future')).toHaveLength(1);
});

test('a curve that grows is judged by its clocks as the whole is', () => {
  const reads = seriesOf(
    read(
      [
        [0, 140],
        [80, 79],
        [300, 39],
      ],
      '°F',
    ),
  ).temperatures;
  const growing = beginCurve([coolingUncured]);
  for (const reading of reads) addReading(growing, reading);
  expect(judgeSoFar(growing, { ended: true, now: 30 * MINUTE })[0]?.kind).toBe('undetermined');
  expect(judgeSoFar(growing, { ended: true, now: 300 * MINUTE })[0]?.kind).toBe('met');
});
