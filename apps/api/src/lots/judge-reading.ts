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

export type Taken = {
  id: string;
  probe: string;
  takenAt: Date;
  value: number | null;
  unit: string | null;
  answer: boolean | null;
  seen: string;
  humidity?: HumidityKept | null;
  /** When the server kept the first of its chain of corrections; an answer has its own. */
  arrivedAt?: Date;
  /** When the server kept this row: a corrected single value is a new value. */
  keptAt?: Date;
  /** What a person said of it, where that counts. */
  word?: Word;
};

export function judgeReading(point: ControlPoint, taken: Taken, cook?: CookSeen): Judged[] {
  const late = (taken.keptAt?.getTime() ?? NaN) - taken.takenAt.getTime();
  return point.limits.map(({ limitId, limit }) => {
    const verdict = withTimeToCome(judgeAlone(asRead(taken), limit, { errors: point.errors, cook }), late);
    return { limitId, limit, verdict };
  });
}

export const asRead = ({ answer, seen, humidity, ...taken }: Taken): ReadAlone => ({
  read: numberOf(taken),
  answer: answer === null ? undefined : { holds: answer, seen, humidity: humidity ?? undefined },
});

const numberOf = ({ value, unit }: Pick<Taken, 'value' | 'unit'>) => (value !== null && unit !== null ? { value, unit } : undefined);

/** Each kind of value is apart. */
export const seriesAt = (readings: readonly Taken[]): Series =>
  seriesOf(
    readings.flatMap((taken) => {
      const { id, probe, takenAt, arrivedAt, word, value, unit } = taken;
      if (value === null || unit === null) return [];
      return [{ value, unit, at: takenAt.getTime(), id, probe, arrivedAt: arrivedAt?.getTime(), word }];
    }),
  );

export const curveOf = (readings: readonly Taken[]): readonly CurveReading[] => seriesAt(readings).temperatures;
