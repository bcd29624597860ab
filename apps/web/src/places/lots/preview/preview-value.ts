import type { ControlPoint } from '@larderbook/contracts';
import {
  allowingFor,
  degrees,
  isOfKind,
  isTemperatureUnit,
  judgeAlone,
  judgeDwell,
  kindOf,
  type Attestation,
  type Verdict,
} from '@larderbook/haccp';

/**
 * How one value would be judged by itself: against a range, or against the row of a table that needs no holding time.
 */
export function previewValue({ limits, errors }: ControlPoint, value: number, unit: string): Verdict[] {
  return limits.flatMap(({ limit }) => {
    if (kindOf(limit).takenAs === 'value') return [judgeAlone({ read: { value, unit } }, limit, { errors })];
    if (isOfKind(limit, 'dwell') && isTemperatureUnit(unit)) {
      return [judgeDwell([{ at: 0, temperature: degrees(value, unit) }], limit, { ended: true, ...allowingFor(errors) })];
    }
    return [];
  });
}

/** How an answer would be judged. */
export const previewAnswer = ({ limits }: ControlPoint, answer: Attestation | undefined): Verdict[] =>
  limits.flatMap(({ limit }) => (isOfKind(limit, 'attestation') && limit.asks !== 'humidity' ? [judgeAlone({ answer }, limit, {})] : []));
