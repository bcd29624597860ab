import type { ControlPoint, Judged } from '@larderbook/contracts';
import {
  judgeAlone,
  seriesOf,
  withTimeToCome,
  type CookSeen,
  type CurveReading,
  type HumidityKept,
  type ReadAlone,
  type Series,
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
    const verdict = withTimeToCome(judgeAlone(asRead(taken), limit, { errors: point.errors, cook }), late);
    return { limitId, limit, verdict };
  });
}

/** A value or an answer as it is judged. */
export const asRead = ({ answer, seen, humidity, ...taken }: Taken): ReadAlone => ({
  read: numberOf(taken),
  answer: answer === null ? undefined : { holds: answer, seen, humidity: humidity ?? undefined },
});

const numberOf = ({ value, unit }: Pick<Taken, 'value' | 'unit'>) => (value !== null && unit !== null ? { value, unit } : undefined);

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
