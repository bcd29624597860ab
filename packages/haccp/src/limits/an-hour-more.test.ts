import { describe, expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { MINUTE, type Point, read, judge, right } from './judge-by-clock.test-data';

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
