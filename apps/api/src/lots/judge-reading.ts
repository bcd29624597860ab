import type { ControlPoint, Judged } from '@larderbook/contracts';
import {
  degrees,
  judgeAttestation,
  judgeFigureRead,
  judgeHumidityKept,
  judgeRange,
  plain,
  sayLimit,
  seriesOf,
  withTimeToCome,
  type CookSeen,
  type CriticalLimit,
  type HumidityKept,
  type CurveReading,
  type Degrees,
  type Measurement,
  type Series,
  type Verdict,
  type Word,
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
  humidity?: HumidityKept | null;
  /** When the server kept it; of a corrected reading when it kept the first of its chain, of an answer always its own. */
  arrivedAt?: Date;
  /** When the server kept this very row: a single value that is corrected is another value of its own moment. */
  keptAt?: Date;
  /** What a person said of it, where that counts. */
  word?: Word;
};

/** One reading by itself, against every limit of its control point. */
export function judgeReading(point: ControlPoint, taken: Taken, cook?: CookSeen): Judged[] {
  const late = (taken.keptAt?.getTime() ?? NaN) - taken.takenAt.getTime();
  return point.limits.map(({ limitId, limit }) => {
    const verdict = withTimeToCome(judgeAlone(limit, taken, point, cook), late);
    return { limitId, limit, verdict };
  });
}

function judgeAlone(limit: CriticalLimit, taken: Taken, { errors }: ControlPoint, cook?: CookSeen): Verdict {
  switch (limit.kind) {
    case 'range':
      return judgeRange(measurementOf(taken), limit, errors);
    case 'figure':
      return judgeFigureRead(numberOf(taken), limit, errors);
    case 'attestation':
      return limit.asks === 'humidity' ? judgeHumidityKept(answerOf(taken), limit, cook) : judgeAttestation(answerOf(taken), limit);
    default:
      return notJudgedSo(limit);
  }
}

const answerOf = ({ answer, seen, humidity }: Taken) =>
  answer === null ? undefined : { holds: answer, seen, humidity: humidity ?? undefined };

const numberOf = ({ value, unit }: Taken) => (value !== null && unit !== null ? { value, unit } : undefined);

/** Readings as a series, each kind apart. */
export const seriesAt = (readings: readonly Taken[]): Series =>
  seriesOf(
    readings.flatMap((taken) => {
      const { id, probe, takenAt, arrivedAt, word, value, unit } = taken;
      if (value === null || unit === null) return [];
      return [{ value, unit, at: takenAt.getTime(), id, probe, arrivedAt: arrivedAt?.getTime(), word }];
    }),
  );

/** The temperatures among readings, ready to be judged as a series. */
export const curveOf = (readings: readonly Taken[]): readonly CurveReading[] => seriesAt(readings).temperatures;

function temperatureOf({ value, unit }: Pick<Taken, 'value' | 'unit'>): Degrees | undefined {
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
