import type { ControlPoint, Judged } from '@larderbook/contracts';
import {
  degrees,
  judgeAttestation,
  judgeRange,
  plain,
  sayLimit,
  type CriticalLimit,
  type CurveReading,
  type Degrees,
  type Measurement,
  type Verdict,
} from '@larderbook/haccp';

/** What a person read or answered, as it is kept. */
export type Taken = {
  id: string;
  probe: string;
  takenAt: Date;
  value: number | null;
  unit: string | null;
  answer: boolean | null;
  seen: string;
};

/** One reading by itself, against every limit of its control point. */
export const judgeReading = (point: ControlPoint, taken: Taken): Judged[] =>
  point.limits.map(({ limitId, limit }) => ({ limitId, limit, verdict: judgeAlone(limit, taken) }));

function judgeAlone(limit: CriticalLimit, taken: Taken): Verdict {
  switch (limit.kind) {
    case 'range':
      return judgeRange(measurementOf(taken), limit);
    case 'attestation':
      return judgeAttestation(taken.answer === null ? undefined : { holds: taken.answer, seen: taken.seen }, limit);
    default:
      return notJudgedSo(limit);
  }
}

/** The temperatures among readings, ready to be judged as a series. */
export const curveOf = (readings: readonly Taken[]): CurveReading[] =>
  readings.flatMap((taken) => {
    const temperature = temperatureOf(taken);
    return temperature ? [{ at: taken.takenAt.getTime(), temperature, id: taken.id, probe: taken.probe }] : [];
  });

export function temperatureOf({ value, unit }: Pick<Taken, 'value' | 'unit'>): Degrees | undefined {
  return value !== null && (unit === '°C' || unit === '°F') ? degrees(value, unit) : undefined;
}

export function measurementOf(taken: Pick<Taken, 'value' | 'unit'>): Measurement | undefined {
  return temperatureOf(taken) ?? (taken.value === null ? undefined : plain(taken.value));
}

/** An adopted plan asks for the record its limits are judged from; should one not, that is doubt, never met. */
export const notJudgedSo = (limit: CriticalLimit): Verdict => ({
  kind: 'undetermined',
  measured: 'nothing usable',
  limit: sayLimit(limit),
  because: 'This limit cannot be judged from what this control point records.',
  next: 'Correct the plan.',
  notes: [],
  source: limit.source,
});
