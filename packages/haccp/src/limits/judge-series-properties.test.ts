import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { atMostOneLogGrown, frozenByCentre, salmonellaKilled } from '../limit-sets/fsis-processes';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { judgeSeries } from './judge-series';
import type { CurveContext } from './curve-context';
import type { SeriesLimit } from './limit';
import { seriesOf, type ReadValue } from './series-of';

const HOUR = 3_600_000;
const { source } = cookedMeat65Log;
const limits: SeriesLimit[] = [
  cookedMeat65Log,
  coolingUncured,
  comeUpWithinSixHours,
  { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' },
  atMostOneLogGrown,
  { kind: 'degreeHours', ...degreeHoursFahrenheit },
  { kind: 'weightLoss', percent: 35, source },
  frozenByCentre,
  { ...frozenByCentre, read: { what: 'freezer', thickness: { value: 6, unit: 'in' } } },
];

const value = fc.oneof(
  fc.record({ unit: fc.constant('°F'), value: fc.integer({ min: -40, max: 220 }) }),
  fc.record({ unit: fc.constant('°C'), value: fc.integer({ min: -40, max: 110 }) }),
  fc.record({ unit: fc.constant('pH'), value: fc.integer({ min: 45, max: 60 }).map((tenths) => tenths / 10) }),
  fc.record({ unit: fc.constantFrom('g', 'kg', 'lb', 'oz'), value: fc.integer({ min: 1, max: 3000 }) }),
  fc.record({ unit: fc.constantFrom('°F', 'pH', 'g'), value: fc.constantFrom(NaN, -1e9, 1e9) }),
);
const at = fc.oneof(
  fc.integer({ min: 0, max: 240 }).map((quarters) => (quarters * HOUR) / 4),
  fc.constantFrom(NaN, Infinity),
);
const probe = fc.constantFrom(undefined, 'A', 'B');
const odd = fc.record({ at, probe, value }).map(({ value: read, ...where }): ReadValue => ({ ...where, ...read }));
/** A core on its way down, which some limits are met by. */
const falling = fc
  .record({ from: fc.integer({ min: 100, max: 165 }), step: fc.integer({ min: 1, max: 20 }) })
  .map(({ from, step }) =>
    Array.from({ length: 24 }, (_, i): ReadValue => ({ at: (i * HOUR) / 4, unit: '°F', value: Math.max(34, from - i * step) })),
  );
const series = fc.tuple(falling, fc.array(odd, { maxLength: 12 })).map((both) => both.flat());
const context = fc.record({
  ended: fc.boolean(),
  startAt: fc.constantFrom(0, HOUR),
  instrumentError: fc.constantFrom(undefined, { hundredths: 100, unit: '°F' as const }),
});

/** Has a piece or probe been read of which a limit of this kind is judged? */
const isRead = (reads: readonly ReadValue[], { kind }: SeriesLimit): boolean => {
  const { temperatures, acid, weights } = seriesOf(reads);
  if (kind === 'weightLoss') return weights.length > 0;
  return temperatures.length > 0 && (kind !== 'degreeHours' || acid.length > 0);
};

test('what another probe or piece shows never turns missed or undetermined into met', () => {
  fc.assert(
    fc.property(series, context, fc.constantFrom('A', 'B'), (reads, known, other) => {
      const own = reads.filter((read) => read.probe !== other);
      const [alone, together] = [own, reads].map((some) => judgeSeries(seriesOf(some), limits, known));
      limits.forEach((limit, index) => {
        const isHelped = together?.[index]?.kind === 'met' && alone?.[index]?.kind !== 'met';
        if (isRead(own, limit)) expect([limit.kind, isHelped]).toEqual([limit.kind, false]);
      });
    }),
    { numRuns: 400 },
  );
});

test('whatever was read, a verdict holds no number that cannot be sent', () => {
  fc.assert(
    fc.property(series, context, (reads, known) => {
      for (const verdict of judgeSeries(seriesOf(reads), limits, known)) {
        const { running, spare } = verdict;
        const numbers = [running?.deadline, running?.since, running?.until, spare].filter((one) => one !== undefined);
        expect(numbers.every(Number.isFinite)).toBe(true);
      }
    }),
    { numRuns: 400 },
  );
});

test('what is undetermined has nothing to spare, whatever was read', () => {
  fc.assert(
    fc.property(series, context, (reads, known) => {
      const doubted = judgeSeries(seriesOf(reads), limits, known).filter(({ kind }) => kind === 'undetermined');
      for (const { figures } of doubted) expect(figures).not.toHaveProperty('spare');
    }),
    { numRuns: 400 },
  );
});

/**
 * A chamber that warms up and then swings, its warmest always on record; and meat that only gets more acid. A reading
 * may be missing unless it is warmer than what stays beside it, since nothing else then tells of that warmth.
 */
test('readings left out never turn degree-hours that are missed or undetermined into met', () => {
  const degreeHours: SeriesLimit = { kind: 'degreeHours', ...degreeHoursFahrenheit };
  const chamber = fc.array(fc.integer({ min: 550, max: 1050 }), { minLength: 3, maxLength: 30 });
  const acid = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 6 });
  const fermentation = fc.record({
    chamber,
    acid,
    every: fc.constantFrom(1, 1.5, 2, 3),
    startAt: fc.constantFrom(undefined, 0, HOUR, -3 * HOUR),
    ended: fc.boolean(),
    drops: fc.array(fc.nat({ max: 40 }), { maxLength: 12 }),
    pHError: fc.constantFrom(0, 50),
  });
  fc.assert(
    fc.property(fermentation, ({ chamber: tenths, acid: falls, every, startAt, ended, drops, pHError }) => {
      const warm = tenths.map((tenth, index): ReadValue => ({ at: index * every * HOUR, unit: '°F', value: tenth / 10 }));
      let pH = 56;
      const sour = falls.map((by, index): ReadValue => {
        pH -= by;
        return { at: (index + 1) * 7 * HOUR, unit: 'pH', value: pH / 10 };
      });
      const known = { startAt, ended, acidError: { thousandths: pHError } };
      const isBefore = ({ at }: ReadValue) => at < (startAt ?? -Infinity);
      const early = warm.filter(isBefore);
      const left = [...early, ...drops.reduce(without, [...warm.filter((read) => !isBefore(read)), ...sour])];
      const [all, fewer] = [[...warm, ...sour], left].map((reads) => judgeSeries(seriesOf(reads), [degreeHours], known)[0]);
      if (all?.kind !== 'met') expect(fewer?.kind).not.toBe('met');
      if (startAt === undefined) expect(all?.kind).not.toBe('met');
    }),
    { numRuns: 3000 },
  );
});

test('a chamber that was warm before the recorded start counts from then on, so that its reading can only count against', () => {
  const degreeHours: SeriesLimit = { kind: 'degreeHours', ...degreeHoursFahrenheit };
  const chamber = [55, 94.8, 104.8, 55, 105, 102.9, 55, 102.8].map(
    (value, index): ReadValue => ({ at: index * 3 * HOUR, unit: '°F', value }),
  );
  const acid = [5.6, 5.6, 5.3].map((value, index): ReadValue => ({ at: (index + 1) * 7 * HOUR, unit: 'pH', value }));
  const [whole, without0] = [chamber, chamber.slice(1)].map(
    (reads) => judgeSeries(seriesOf([...reads, ...acid]), [degreeHours], { startAt: HOUR, ended: true })[0],
  );
  expect([whole?.kind, without0?.kind]).toEqual(['undetermined', 'met']);
});

/** Leaves out one reading, the first and the last too, unless it is the warmest beside those that stay. */
function without(reads: readonly ReadValue[], drop: number): ReadValue[] {
  const index = drop % Math.max(1, reads.length);
  const one = reads[index];
  const beside = [reads[index - 1], reads[index + 1]].filter((other) => other?.unit === one?.unit);
  const isTold = one?.unit === 'pH' || beside.some((other) => (other?.value ?? 0) >= (one?.value ?? 0));
  return reads.filter((_, at) => !isTold || at !== index);
}

/** So thin, and in what may be so hot and so cold, that no reading is too fast for its core. */
const anywhere: Pick<CurveContext, 'piece' | 'surroundings'> = {
  piece: { shape: 'cylinder', smallest: { value: 1, unit: 'mm' } },
  surroundings: {
    readings: [-4000, 12_900].map((hundredths, at) => ({ at, temperature: { hundredths, unit: '°C' } })),
  },
};

/** Of the figures: a larger error also lets a reading be a core's that was too fast for one with a smaller error. */
test('a larger error of an instrument never turns what is not met into met', () => {
  const hundredths = fc.integer({ min: 0, max: 300 });
  fc.assert(
    fc.property(series, context, hundredths, hundredths, (reads, known, error, more) => {
      const judged = (by: number) =>
        judgeSeries(seriesOf(reads), limits, {
          ...known,
          ...anywhere,
          instrumentError: { hundredths: by, unit: '°F' },
          acidError: { thousandths: by },
          scaleError: BigInt(by) * 10n ** 15n,
        });
      const [narrow, wide] = [judged(error), judged(error + more)];
      limits.forEach((limit, index) => {
        const isHelped = wide[index]?.kind === 'met' && narrow[index]?.kind !== 'met';
        expect([limit.kind, isHelped]).toEqual([limit.kind, false]);
      });
    }),
    { numRuns: 400 },
  );
});
