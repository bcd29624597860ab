import { isOfSurroundings, type ControlPointOnLot } from '@larderbook/contracts';
import { allowingFor, degrees, errorOf, isChill, seriesOf, whichIsRight } from '@larderbook/haccp';
import type { NumberQuestion } from '../../../ui/plausible';
import { readsWith, surroundingsOf, type NewReading } from './preview-curve';

/**
 * What to ask about a temperature of a series before it is kept: by the course of its curve and by what the product lies
 * in, as the server asks. Undefined when nothing is odd.
 */
export function askBeside(
  { controlPoint, ...point }: ControlPointOnLot,
  next: NewReading,
  amends?: string,
): NumberQuestion | undefined {
  const { unit } = next;
  const isRead = controlPoint.takenAs === 'curve' && (unit === '°F' || unit === '°C');
  if (!isRead || isOfSurroundings(controlPoint, next)) return undefined;
  const reads = readsWith({ controlPoint, ...point }, undefined, amends);
  const question = whichIsRight(
    { at: next.at, temperature: degrees(next.value, unit) },
    {
      before: seriesOf(reads.filter(({ probe }) => probe === next.probe)).temperatures,
      surroundings: surroundingsOf(controlPoint, reads),
      error: errorOf(allowingFor(controlPoint.errors)) ?? 0,
      isChilling: isChill(controlPoint.limits.map(({ limit }) => limit)),
    },
  );
  return question && { because: question.because, meant: question.meant.map(toNumber) };
}

const toNumber = ({ hundredths, unit }: { hundredths: number; unit: string }) => ({ value: hundredths / 100, unit });
