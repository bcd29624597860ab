import type { ControlPoint } from '@larderbook/contracts';
import { allowingFor, degrees, isOfKind, isTemperatureUnit, judgeAlone, judgeDwell, kindOf, type Attestation } from '@larderbook/haccp';
import type { VerdictOn } from './verdict-on';

/**
 * How one value would be judged by itself: against a range, or against the row of a table that needs no holding time.
 */
export function previewValue({ limits, errors }: ControlPoint, value: number, unit: string): VerdictOn[] {
  return limits.flatMap(({ limit }): VerdictOn[] => {
    if (kindOf(limit).takenAs === 'value') return [{ ...judgeAlone({ read: { value, unit } }, limit, { errors }), on: limit }];
    if (isOfKind(limit, 'dwell') && isTemperatureUnit(unit)) {
      return [{ ...judgeDwell([{ at: 0, temperature: degrees(value, unit) }], limit, { ended: true, ...allowingFor(errors) }), on: limit }];
    }
    return [];
  });
}

/** How an answer would be judged. */
export const previewAnswer = ({ limits }: ControlPoint, answer: Attestation | undefined): VerdictOn[] =>
  limits.flatMap(({ limit }) =>
    isOfKind(limit, 'attestation') && limit.asks !== 'humidity' ? [{ ...judgeAlone({ answer }, limit, {}), on: limit }] : [],
  );
