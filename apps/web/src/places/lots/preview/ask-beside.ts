import { isOfSurroundings, type ControlPointOnLot } from '@larderbook/contracts';
import { allowingFor, degrees, errorOf, isChill, isOfCore, seriesOf, whichIsRight, type Piece, type WhichIsRight } from '@larderbook/haccp';
import type { MeantInstead } from '../../../ui/plausible';
import { readsWith, surroundingsOf, type NewReading } from './preview-curve';

/** `amends` is the reading it corrects; `usualPiece` serves where the plan states none. */
type Beside = { amends?: string; usualPiece?: Piece };

/** Why a person is asked, and what may have been meant. */
type OddReading = { because: WhichIsRight['because']; meant: MeantInstead[] };

/**
 * Asks as the server does: by the curve's course, the surroundings, and how fast the core can move. Undefined when
 * nothing is odd.
 */
export function askBeside(
  { controlPoint, ...point }: ControlPointOnLot,
  next: NewReading,
  { amends, usualPiece }: Beside = {},
): OddReading | undefined {
  const { unit } = next;
  const isRead = controlPoint.takenAs === 'curve' && (unit === '°F' || unit === '°C');
  if (!isRead || isOfSurroundings(controlPoint, next)) return undefined;
  const limits = controlPoint.limits.map(({ limit }) => limit);
  const reads = readsWith({ controlPoint, ...point }, undefined, amends);
  const question = whichIsRight(
    { at: next.at, temperature: degrees(next.value, unit) },
    {
      before: seriesOf(reads.filter(({ probe }) => probe === next.probe)).temperatures,
      surroundings: surroundingsOf(controlPoint, reads),
      piece: isOfCore(limits) ? (controlPoint.piece ?? usualPiece) : undefined,
      error: errorOf(allowingFor(controlPoint.errors)) ?? 0,
      isChilling: isChill(limits),
    },
  );
  return question && { because: question.because, meant: question.meant.map(toNumber) };
}

const toNumber = ({ hundredths, unit }: { hundredths: number; unit: string }) => ({ value: hundredths / 100, unit });
