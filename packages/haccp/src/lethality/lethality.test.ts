import { nameOfSet } from './name-of-set';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { judgeCurve } from '../limits/judge-curve';
import { degrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import { addToLethality, addUpLethality, beginLethality, lethalityOf } from './add-up-lethality';
import { judgeCook } from './judge-cook';
import { killAbove, killLaw, killOver } from './kill-rate';
import { lethalityAtFloors } from './lethality-at-floors';
import { lethalityOverTime } from './lethality-over-time';
import { plainPart } from '../limits/plain-part.test-data';
import { lethalityFound } from './lethality-found';
import { lethalitySets, listeria70For2, salmonellaByTheMeatTable } from './sets';
import { rowsReachedInAll } from './time-at-rows';

const MINUTE = 60_000;
const curve = (...points: [minutes: number, celsius: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°C') }));
const S = salmonellaByTheMeatTable;
const logs = (readings: CurveReading[], floorCelsius = -Infinity) =>
  addUpLethality(readings, S, { floorCelsius, longestGap: Infinity }).byStraightLines;
const relative = (a: number, b: number) => Math.abs(a - b) / Math.max(1e-300, Math.abs(a), Math.abs(b));

const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 2000 })), {
  minLength: 2,
  maxLength: 10,
});
/** Multiples of 0.05 °C, so that each is also a whole number of hundredths °F. */
const curves = steps.map((all) => {
  let at = 0;
  return all.map(([gap, fives]): CurveReading => {
    at += gap * MINUTE;
    return { at, temperature: { hundredths: fives * 5, unit: '°C' } };
  });
});
const floors = fc.constantFrom(-Infinity, 54.4, 57.2);

test('cutting a straight piece in two anywhere changes nothing', () => {
  const law = killLaw(S);
  const temperature = fc.integer({ min: -4000, max: 11_000 }).map((hundredths) => hundredths * 9);
  const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
  fc.assert(
    fc.property(temperature, temperature, share, floors, (a, b, cut, floor) => {
      const low = floor * 900;
      const middle = a + (b - a) * cut;
      const whole = killAbove(law, low, a, b, 1e6);
      const parts = killAbove(law, low, a, middle, 1e6 * cut) + killAbove(law, low, middle, b, 1e6 * (1 - cut));
      expect(relative(whole, parts)).toBeLessThan(1e-9);
    }),
    { numRuns: 1000 },
  );
});

test('a hotter reading never lowers it', () => {
  fc.assert(
    fc.property(curves, fc.nat(), fc.integer({ min: 1, max: 1000 }), floors, (readings, pick, more, floor) => {
      const hotter = readings.map(({ at, temperature }, i) => ({
        at,
        temperature: { ...temperature, hundredths: temperature.hundredths + (i === pick % readings.length ? more : 0) },
      }));
      expect(logs(hotter, floor)).toBeGreaterThanOrEqual(logs(readings, floor) * (1 - 1e-9));
    }),
    { numRuns: 1000 },
  );
});

test('later instants, the other unit and time running backwards change nothing', () => {
  fc.assert(
    fc.property(curves, fc.integer({ min: -1e12, max: 1e12 }), floors, (readings, by, floor) => {
      const whole = logs(readings, floor);
      const later = readings.map((reading) => ({ ...reading, at: reading.at + by }));
      const inFahrenheit = readings.map(({ at, temperature }) => ({
        at,
        temperature: { hundredths: (temperature.hundredths / 5) * 9 + 3200, unit: '°F' as const },
      }));
      const end = readings.at(-1)?.at ?? 0;
      const backwards = readings.map((reading) => ({ ...reading, at: end - reading.at })).toReversed();
      for (const other of [later, inFahrenheit, backwards]) {
        expect(relative(whole, logs(other, floor))).toBeLessThan(1e-9);
      }
    }),
  );
});

test('a level piece and one that is almost level agree', () => {
  const law = killLaw(S);
  expect(relative(killOver(law, 54_000, 54_000, 60_000), killOver(law, 54_000, 54_000.001, 60_000))).toBeLessThan(1e-6);
});

test('across a gap only the colder end is counted as sure', () => {
  const readings = curve([0, 60], [20, 70]);
  const { byStraightLines, atLeast } = addUpLethality(readings, S);
  expect(atLeast).toBeCloseTo(20 / 1.714, 9);
  expect(byStraightLines).toBeGreaterThan(atLeast * 10);
  const close = addUpLethality(curve([0, 60], [15, 70]), S);
  expect(close.atLeast).toBe(close.byStraightLines);
  expect(addUpLethality(curve([0, 50], [20, 70]), S).atLeast).toBe(0);
  expect(addUpLethality(readings, S, { longestGap: NaN }).atLeast).toBe(atLeast);
});

test('nothing, one reading, and what cannot be true give no lethality', () => {
  expect(addUpLethality([], S)).toMatchObject({ byStraightLines: 0, atLeast: 0, restsOn: { readings: 0 } });
  expect(addUpLethality(curve([5, 80]), S)).toMatchObject({
    byStraightLines: 0,
    restsOn: { readings: 1, from: 5 * MINUTE, to: 5 * MINUTE },
  });
  const broken = [NaN, Infinity, 99_900].map((hundredths, at) => ({
    at,
    temperature: { hundredths, unit: '°C' as const },
  }));
  expect(addUpLethality(broken, S).restsOn).toEqual({ readings: 0 });
});

test('a floor that is no number is the usual one', () => {
  expect(addUpLethality(curve([0, 40], [10, 60]), S, { floorCelsius: NaN }).floorCelsius).toBeCloseTo(54.4, 9);
});

test('it can be added up one reading at a time', () => {
  const readings = curve([0, 50], [10, 60], [20, 65], [30, 40]);
  const sum = beginLethality(S);
  for (const { at, temperature } of readings) addToLethality(sum, at, temperature.hundredths * 9);
  expect(lethalityOf(sum)).toEqual(addUpLethality(readings, S));
});

test('the careful floor is shown beside the usual one where they differ by more than half a log', () => {
  expect(lethalityAtFloors(curve([0, 58], [15, 60]), S)).toHaveLength(1);
  const marginal = lethalityAtFloors(curve([0, 55], [15, 56], [30, 57], [45, 57]), S);
  expect(marginal.map(({ floorCelsius }) => floorCelsius)).toEqual([expect.closeTo(54.4, 9), expect.closeTo(57.2, 9)]);
});

test('a figure is said in half logs, rounded down, capped, and never without its set', () => {
  const said = (atLeast: number, set = S) => plainPart(lethalityFound({ atLeast, set }));
  expect(said(5.99)).toBe('killed-about 5.5 log10 set-salmonella-meat-table confirmed');
  expect(said(12)).toBe('killed-about 12 log10 set-salmonella-meat-table confirmed');
  expect(said(12.01)).toMatch(/^killed-more-than 12 log10 /);
  for (const set of lethalitySets) {
    expect(said(3, set)).toMatch(/ set-/);
    expect(said(3, set).endsWith(' unconfirmed')).toBe(!set.source.confirmed);
    expect(set.name).toContain(set.organism);
  }
  expect(new Set(lethalitySets.map(({ name }) => name)).size).toBe(lethalitySets.length);
});

test('lethality over time ends at the whole, begins at nothing and never falls', () => {
  const readings = curve(...Array.from({ length: 1000 }, (_, i): [number, number] => [i, 40 + (i % 30)]));
  const line = lethalityOverTime(readings, S, 50);
  expect(line.at).toHaveLength(50);
  expect([line.at[0], line.at[49]]).toEqual([0, 999 * MINUTE]);
  expect(line.log10[0]).toBe(0);
  expect(line.log10[49]).toBe(addUpLethality(readings, S).byStraightLines);
  expect([...line.log10]).toEqual([...line.log10].sort((a, b) => a - b));
  expect(lethalityOverTime(readings.slice(0, 3), S).at).toHaveLength(3);
  expect([...lethalityOverTime(readings.slice(0, 1), S).at]).toEqual([0]);
  expect(lethalityOverTime(readings, S, NaN).at).toHaveLength(2);
  expect(lethalityOverTime([], S).at).toHaveLength(0);
});

test('a row whose time is there in all, but with a break, is shown and not met', () => {
  const readings = curve([0, 62.8], [2, 62.8], [3, 60], [4, 62.8], [7, 62.8], [8, 50]);
  expect(rowsReachedInAll(readings, cookedMeat65Log).map(({ at }) => at['°C'])).toContain(6280);
  const cook = judgeCook(readings, cookedMeat65Log, { ended: true });
  expect(cook.verdict.kind).toBe('missed');
  expect(cook).toMatchObject({ by: 'nothing yet', support: { rowsInAll: expect.any(Array) as unknown[] } });
});

test('a cook met by a row and one met at once say so; support is named with its probe and its sets', () => {
  const held = curve([0, 62.8], [4, 62.8]);
  expect(judgeCook(held, cookedMeat65Log, { ended: true }).by).toBe('printed row');
  expect(judgeCook(curve([0, 70]), cookedMeat65Log, { ended: true }).by).toBe('no holding time needed');
  const short = held.map((reading) => ({ ...reading, at: reading.at / 2, probe: 'A' }));
  const cook = judgeCook(short, cookedMeat65Log, { ended: true });
  expect('support' in cook && cook.support.figures.map(({ probe, set }) => [probe, set.name])).toEqual([
    ['A', S.name],
    ['A', listeria70For2.name],
  ]);
});

test('an integral never changes a verdict', () => {
  fc.assert(
    fc.property(curves, fc.boolean(), (readings, ended) => {
      const { verdict, by } = judgeCook(readings, cookedMeat65Log, { ended });
      expect(verdict).toEqual(judgeCurve(readings, cookedMeat65Log, { ended }));
      expect(by === 'nothing yet').toBe(verdict.kind !== 'met');
    }),
  );
});

test('each set of the book has a code of its own, by which the reader is told its name', () => {
  const codes = lethalitySets.map((set) => nameOfSet(set));
  expect(codes.every((name) => typeof name === 'object')).toBe(true);
  expect(new Set(codes.map((name) => plainPart(name))).size).toBe(lethalitySets.length);
  expect(nameOfSet({ name: 'A set of our own' })).toBe('A set of our own');
});
