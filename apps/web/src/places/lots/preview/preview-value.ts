import type { ControlPoint } from '@larderbook/contracts';
import { allowingFor, degrees, isOfKind, isTemperatureUnit, judgeAlone, judgeDwell, kindOf, type Attestation } from '@larderbook/haccp';
import type { VerdictOn } from './verdict-on';

/** Judges one value by itself: against a range, or a table row that needs no holding time. */
export function previewValue({ limits, errors }: ControlPoint, value: number, unit: string): VerdictOn[] {
  return limits.flatMap(({ limit }): VerdictOn[] => {
    if (kindOf(limit).takenAs === 'value') return [{ ...judgeAlone({ read: { value, unit } }, limit, { errors }), on: limit }];
    if (isOfKind(limit, 'dwell') && isTemperatureUnit(unit)) {
      return [{ ...judgeDwell([{ at: 0, temperature: degrees(value, unit) }], limit, { ended: true, ...allowingFor(errors) }), on: limit }];
    }
    return [];
  });
}

export const previewAnswer = ({ limits }: ControlPoint, answer: Attestation | undefined): VerdictOn[] =>
  limits.flatMap(({ limit }) =>
    isOfKind(limit, 'attestation') && limit.asks !== 'humidity' ? [{ ...judgeAlone({ answer }, limit, {}), on: limit }] : [],
  );
