import { isOfSurroundings, massUnits, type ControlPoint } from '@larderbook/contracts';
import {
  asGiven,
  degreesOf,
  allowingFor,
  askAboutPiece,
  degrees,
  errorOf,
  isChill,
  isOfCore,
  roundedMass,
  massOf,
  usualOfPiece,
  whichIsRight,
  type EnteredMass,
  type MassUnit,
  type Piece,
} from '@larderbook/haccp';
import { curveOf, type Taken } from '../lots/judge-reading';
import { surroundingsAt } from '../lots/surroundings-at';
import { told } from '../platform/told';
import { askMeant, type Question } from '../lots/ask-about-weight';

/**
 * Compares with the readings before: the course of the curve, the surroundings and how fast the core can move, or the
 * last weight of the piece.
 */
export function askBeside({ point, piece }: At, taken: Taken, others: readonly Taken[]): Question | undefined {
  if (point.takenAs !== 'curve' || taken.value === null || isOfSurroundings(point, taken)) return undefined;
  const before = others.filter(({ probe, takenAt }) => probe === taken.probe && takenAt <= taken.takenAt);
  const { value, unit } = taken;
  if (unit === '°C' || unit === '°F') return askAboutCourse({ point, piece }, { ...taken, value, unit }, before, others);
  return isMass(unit) ? askAboutWeight({ value, unit }, before) : undefined;
}

type At = { point: ControlPoint; piece?: Piece };
type Read = Taken & { value: number; unit: '°C' | '°F' };

function askAboutCourse({ point, piece }: At, taken: Read, before: Taken[], others: readonly Taken[]) {
  const limits = point.limits.map(({ limit }) => limit);
  const around = others.filter((other) => isOfSurroundings(point, other));
  const question = whichIsRight(
    { at: taken.takenAt.getTime(), temperature: degrees(taken.value, taken.unit) },
    {
      before: curveOf(before),
      surroundings: surroundingsAt(point, around),
      piece: isOfCore(limits) ? piece : undefined,
      error: errorOf(allowingFor(point.errors)) ?? 0,
      isChilling: isChill(limits),
    },
  );
  if (!question) return undefined;
  const [other] = question.meant;
  return [question.because, askMeant(other && degreesOf(other))];
}

function askAboutWeight(weight: EnteredMass, before: Taken[]): Question | undefined {
  const masses = before.flatMap(({ value, unit }) => (value !== null && isMass(unit) ? [massOf({ value, unit })] : []));
  const usual = usualOfPiece(masses);
  const asked = usual && askAboutPiece(weight, usual);
  if (!asked) return undefined;
  const last = roundedMass(masses.at(-1) ?? 0n, weight.unit);
  return [
    told('weighed-before', { entered: asGiven(weight.value, weight.unit), before: last }),
    askMeant(asked.meant && asGiven(asked.meant.value, asked.meant.unit)),
  ];
}

const isMass = (unit: string | null): unit is MassUnit => massUnits.some((each) => each === unit);
