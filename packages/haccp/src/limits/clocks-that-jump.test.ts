import { expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { addReading, beginCurve, judgeSoFar } from './judge-curve-so-far';
import { seriesOf } from './series-of';
import { MINUTE, type Point, read, judge, right } from './judge-by-clock.test-data';

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
