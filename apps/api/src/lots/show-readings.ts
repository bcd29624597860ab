import type { ControlPoint, ControlPointOnLot, ReadingUnit } from '@larderbook/contracts';
import { saidByReading } from './clarifications.queries';
import { corrections, listed } from './corrections';
import { cookSeen } from './cook-seen';
import { judgeReading } from './judge-reading';
import type { LotRows, ReadingOnLot } from './lot-rows';
import type { Shown } from './read-shown';
import { rootsOf } from './reading-roots';

type Reading = ControlPointOnLot['readings'][number];
export type ReadingsAt = (point: ControlPoint) => Reading[];

/** Oldest first, corrected ones included. */
export function showReadings(rows: LotRows, shown: Shown): ReadingsAt {
  const { readings, clarifications, deviations } = rows;
  const { readings: entries, people, names, checks } = shown;
  const entryOf = new Map(entries.map((entry) => [entry.id, entry]));
  const correction = corrections(entries, people, checks);
  const saidOf = saidByReading(clarifications, people);
  const instrumentOf = (id: string | null) => (id ? { instrumentId: id, name: names.get(id) ?? '' } : undefined);
  const roots = rootsOf(readings);
  const openedBy = (readingId: string) =>
    deviations.find(({ subjectId, dedupeKey }) => subjectId === readingId || dedupeKey.startsWith(`reading:${roots.get(readingId)}:`))
      ?.deviationId;

  return (point) =>
    listed(readings)
      .filter(({ controlPointId }) => controlPointId === point.controlPointId)
      .flatMap((reading): Reading[] => {
        const entry = entryOf.get(reading.id);
        if (!entry) return [];
        return [
          {
            readingId: reading.id,
            controlPointId: reading.controlPointId,
            probe: reading.probe,
            instrument: instrumentOf(entry.instrumentId),
            entered: enteredOf(reading),
            judged: point.takenAs === 'curve' ? [] : judgeReading(point, reading, cookSeen(point, rows)),
            deviationId: openedBy(reading.id),
            clarifications: saidOf.get(reading.id),
            ...correction(entry),
          },
        ];
      });
}

const enteredOf = ({ value, unit, answer, seen, humidity }: ReadingOnLot): Reading['entered'] =>
  value !== null && unit !== null
    ? { value, unit: unit as ReadingUnit }
    : { answer: answer === true, seen, humidity: humidity ?? undefined };
