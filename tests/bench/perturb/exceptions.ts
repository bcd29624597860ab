import { isStirred, unknownPiece, whichIsRight, degrees, type CurveReading } from '@larderbook/haccp';
import type { Taken } from '../../../apps/api/src/lots/judge-reading';
import { inCelsius, type Case } from './a-case';
import { ofCore, type Perturbed } from './perturbations';

/** Why a case that was not met may be met with something wrong in it: nothing that is on record tells of it. */
export const exceptions = {
  'a swing that nobody else saw': (one: Case, { gone = [] }: Perturbed) => gone.some((own) => isSwing(one, own, gone)),
  'a start that no reading contradicts': (one: Case, perturbed: Perturbed) => isUncontradicted(one, perturbed),
  'a wrong value that the piece can have had': (one: Case, { wrong = [], gone = [] }: Perturbed) =>
    wrong.length > 0 && wrong.every((own) => canBe(one, own, gone)),
  'a start said earlier, from which more is charged': ({ kind, records: { startAt } }: Case, { records }: Perturbed) =>
    kind !== 'freezing by air' && startAt !== undefined && records.startAt !== undefined && records.startAt < startAt,
  'an hour off where readings are as far apart, and written down later': (one: Case, { records, moved = [] }: Perturbed) =>
    moved.length > 0 && isKeptAtOnce(records.readings) && isFarApart(one, moved),
} satisfies Record<string, (one: Case, perturbed: Perturbed) => boolean>;

export type Exception = keyof typeof exceptions;

const isKeptAtOnce = (readings: readonly Taken[]) => new Set(readings.map(({ arrivedAt }) => arrivedAt?.getTime())).size === 1;

/** Read by hand: the step to the reading before, or to the one after, hides an hour. */
function isFarApart(one: Case, moved: readonly Taken[]): boolean {
  const own = ofCore(one).filter(({ probe, unit }) => probe === moved[0]?.probe && unit === moved[0]?.unit);
  const steps = own.slice(1).map((reading, index) => reading.takenAt.getTime() - (own[index] as Taken).takenAt.getTime());
  return Math.max(...steps) > 3_600_000 || new Set(steps).size > 1;
}

/** Worse than all that stays on either side of it, of its own probe or piece. */
function isSwing(one: Case, own: Taken, gone: readonly Taken[]): boolean {
  const stays = ofCore(one).filter((other) => other.probe === own.probe && isLike(other, own) && !gone.includes(other));
  const before = stays.filter(({ takenAt }) => takenAt <= own.takenAt).at(-1);
  const after = stays.find(({ takenAt }) => takenAt > own.takenAt);
  const worse = WORSE[one.kind];
  const over = [before, after].flatMap((other) => (other ? [figure(own) - figure(other)] : []));
  return (
    before !== undefined &&
    (over.every((by) => by * worse > 1e-9) || (worse === 0 && (over.every((by) => by > 0) || over.every((by) => by < 0))))
  );
}

/** Whether more or less is worse; either in a come-up. */
const WORSE: Record<Case['kind'], 1 | -1 | 0> = {
  dwell: -1,
  lethality: -1,
  bandTime: 0,
  'cooling from stages': 1,
  'cooling from end of cooking': 1,
  growth: 1,
  degreeHours: 1,
  weightLoss: 1,
  'freezing by air': 1,
  'freezing by centre': 1,
};

const isDegrees = (unit: string | null) => unit === '°F' || unit === '°C';
const isLike = (a: Taken, b: Taken) => a.unit === b.unit || (isDegrees(a.unit) && isDegrees(b.unit));
const figure = ({ value, unit }: Taken): number => inCelsius(value ?? NaN, unit);

/**
 * A start said later than it was where nothing was read before it; or said earlier, of air that was read already; or the
 * readings lost that were earlier than it, and would have shown that it was said late.
 */
function isUncontradicted(one: Case, { records, gone = [] }: Perturbed): boolean {
  const was = one.records.startAt;
  const { startAt } = records;
  if (!startAt || !was) return false;
  if (startAt.getTime() === was.getTime()) return one.kind.startsWith('cooling') && gone.some(({ takenAt }) => takenAt < startAt);
  if (startAt < was) return one.kind === 'freezing by air';
  const first = Math.min(...ofCore(one).map(({ takenAt }) => takenAt.getTime()));
  // A fermentation counts from its first reading where that is earlier than the start.
  const said = one.kind === 'degreeHours' ? Math.min(first, startAt.getTime()) : startAt.getTime();
  return !ofCore(one).some(({ takenAt }) => takenAt >= was && takenAt.getTime() < said);
}

const LAMBDA = { slab: Math.PI ** 2 / 4, cylinder: 5.783185962946784, sphere: Math.PI ** 2 };

/**
 * Worked out anew, not by the judge: against every true reading of its probe, over the time between the two. What freezes
 * follows another law, and of that none is asked for.
 */
function canBe(one: Case, own: Taken, gone: readonly Taken[]): boolean {
  if (!isDegrees(own.unit) || one.kind.startsWith('freezing')) return true;
  const piece = one.point.piece ?? unknownPiece;
  if (isStirred(piece)) return true;
  const { shape, smallest } = piece;
  const half = (smallest.value * (smallest.unit === 'in' ? 0.0254 : 0.001)) / 2;
  const error = Math.max(0.5, (one.point.errors?.temperature?.hundredths ?? 0) / 180);
  const value = figure(own);
  const { hottest, coldest } = mediumOf(one, error);
  return ofCore(one)
    .filter((other) => other.probe === own.probe && isDegrees(other.unit) && !gone.includes(other))
    .every((other) => {
      const seconds = Math.abs(own.takenAt.getTime() - other.takenAt.getTime()) / 1000;
      const left = Math.exp((-LAMBDA[shape] * 1.6e-7 * seconds) / half ** 2);
      const [from, to] = other.takenAt <= own.takenAt ? [figure(other), value] : [value, figure(other)];
      const isTooHigh = hottest - to + error < Math.max(0, hottest - Math.max(from, 0) - error) * left - 1e-6;
      const isTooLow = from > 0 && to - coldest + error < Math.max(0, from - coldest - error) * left - 1e-6;
      return !isTooHigh && !isTooLow;
    });
}

function mediumOf({ point, records }: Case, error: number): { hottest: number; coldest: number } {
  const around = point.surroundings;
  const set = around?.setPoint && inCelsius(around.setPoint.value, around.setPoint.unit);
  const read = records.readings
    .filter(({ probe }) => around && probe === around.name)
    .map(figure)
    .sort((a, b) => a - b);
  const coolest = isBorneOut(read, set) ? read[0] : read[1];
  const warmest = isBorneOut([...read].reverse(), set) ? read.at(-1) : read.at(-2);
  const colder = (coolest ?? Infinity) - 4 - error;
  const hot = (one: number) => (one > 130 ? 100 : one + 4 + error);
  const warmer = hot(warmest ?? -Infinity);
  if (set === undefined) return { hottest: Math.max(100, warmer), coldest: Math.min(-3, colder) };
  if (set < 40) return { hottest: 100, coldest: Math.min(set - 4 - error, Math.max(colder, set - 19 - error)) };
  return { hottest: Math.max(hot(set), hot(Math.min(warmest ?? -Infinity, set + 15))), coldest: -3 };
}

/** Whether the furthest lies within 4 °C of the next, or of the set point. */
const isBorneOut = ([furthest, next]: readonly number[], set: number | undefined): boolean =>
  furthest !== undefined && [next, set].some((one) => one !== undefined && Math.abs(one - furthest) <= 4.000001);

/** Would whoever typed it have been asked which is right? */
export function isAsked(one: Case, { wrong = [] }: Perturbed): boolean {
  return wrong.some((own) => {
    if (!isDegrees(own.unit) || own.value === null) return false;
    const curve = (taken: readonly Taken[]): CurveReading[] =>
      taken
        .filter(({ unit }) => isDegrees(unit))
        .map(({ value, unit, takenAt }) => ({ at: takenAt.getTime(), temperature: degrees(value ?? 0, unit as '°F') }));
    const { surroundings } = one.point;
    const [entered] = curve([own]);
    const before = curve(ofCore(one).filter(({ probe, takenAt }) => probe === own.probe && takenAt < own.takenAt));
    const liesIn = surroundings && {
      setPoint: surroundings.setPoint && degrees(surroundings.setPoint.value, surroundings.setPoint.unit),
      readings: curve(one.records.readings.filter(({ probe }) => probe === surroundings.name)),
    };
    const isChilling = ['cooling from stages', 'cooling from end of cooking', 'growth'].includes(one.kind);
    return entered !== undefined && whichIsRight(entered, { before, surroundings: liesIn, error: 0, isChilling }) !== undefined;
  });
}
