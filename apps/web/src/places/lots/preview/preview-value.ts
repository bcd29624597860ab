import type { ControlPoint } from '@larderbook/contracts';
import {
  allowingFor,
  degrees,
  judgeAttestation,
  judgeDwell,
  judgeFigureRead,
  judgeRange,
  plain,
  type Attestation,
  type Verdict,
} from '@larderbook/haccp';

/**
 * How one value would be judged by itself: against a range, or against the row of a table that needs no holding time.
 */
export function previewValue({ limits, errors }: ControlPoint, value: number, unit: string): Verdict[] {
  const temperature = unit === '°F' || unit === '°C' ? degrees(value, unit) : undefined;
  return limits.flatMap(({ limit }) => {
    if (limit.kind === 'range') return [judgeRange(temperature ?? plain(value), limit, errors)];
    if (limit.kind === 'figure') return [judgeFigureRead({ value, unit }, limit, errors)];
    if (limit.kind === 'dwell' && temperature) {
      return [judgeDwell([{ at: 0, temperature }], limit, { ended: true, ...allowingFor(errors) })];
    }
    return [];
  });
}

/** How an answer would be judged. */
export const previewAnswer = ({ limits }: ControlPoint, answer: Attestation | undefined): Verdict[] =>
  limits.flatMap(({ limit }) => (limit.kind === 'attestation' && limit.asks !== 'humidity' ? [judgeAttestation(answer, limit)] : []));
