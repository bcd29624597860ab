import type { ControlPoint } from '@larderbook/contracts';
import { degrees, judgeAttestation, judgeRange, plain, type Attestation, type Measurement, type Verdict } from '@larderbook/haccp';

/** How one value would be judged against the ranges of its control point. */
export function previewValue({ limits }: ControlPoint, value: number, unit: string): Verdict[] {
  const measurement = measurementOf(value, unit);
  return limits.flatMap(({ limit }) => (limit.kind === 'range' ? [judgeRange(measurement, limit)] : []));
}

/** How an answer would be judged. */
export const previewAnswer = ({ limits }: ControlPoint, answer: Attestation | undefined): Verdict[] =>
  limits.flatMap(({ limit }) => (limit.kind === 'attestation' ? [judgeAttestation(answer, limit)] : []));

const measurementOf = (value: number, unit: string): Measurement =>
  unit === '°F' || unit === '°C' ? degrees(value, unit) : plain(value);
