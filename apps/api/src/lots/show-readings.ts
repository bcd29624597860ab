import type { ControlPoint, ControlPointOnLot } from '@larderbook/contracts';
import type { PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { corrections } from './corrections';
import { judgeReading } from './judge-reading';
import type { LotRows, ReadingOnLot } from './lot-rows';
import { rootsOf } from './reading-roots';

type Reading = ControlPointOnLot['readings'][number];
export type ReadingsAt = (point: ControlPoint) => Reading[];

/** Readings of a lot by control point, oldest first, corrected ones among them. */
export async function showReadings(
  tx: Tx,
  { id: lotId, readings, deviations }: LotRows,
  names: PersonNames,
): Promise<ReadingsAt> {
  const entries = await tx.reading.findMany({
    where: { lotId },
    select: {
      id: true,
      instrumentId: true,
      amendsId: true,
      reason: true,
      flags: true,
      station: true,
      takenAt: true,
      recordedAt: true,
      recordedBy: true,
    },
  });
  const instruments = await tx.instrument.findMany({
    where: { id: { in: [...new Set(entries.flatMap(({ instrumentId }) => instrumentId ?? []))] } },
    select: { id: true, name: true },
  });
  const entryOf = new Map(entries.map((entry) => [entry.id, entry]));
  const instrumentOf = new Map(instruments.map(({ id, name }) => [id, { instrumentId: id, name }]));
  const correction = corrections(entries, names);
  const roots = rootsOf(readings);
  const openedBy = (readingId: string) =>
    deviations.find(
      ({ subjectId, cause }) => subjectId === readingId || cause.startsWith(`reading:${roots.get(readingId)}:`),
    )?.deviationId;

  return (point) =>
    readings
      .filter(({ controlPointId }) => controlPointId === point.controlPointId)
      .flatMap((reading): Reading[] => {
        const entry = entryOf.get(reading.id);
        if (!entry) return [];
        return [
          {
            readingId: reading.id,
            controlPointId: reading.controlPointId,
            probe: reading.probe,
            instrument: instrumentOf.get(entry.instrumentId ?? ''),
            entered: enteredOf(reading),
            judged: point.takenAs === 'curve' ? [] : judgeReading(point, reading),
            deviationId: openedBy(reading.id),
            ...correction(entry),
          },
        ];
      });
}

const enteredOf = ({ value, unit, answer, seen }: ReadingOnLot): Reading['entered'] =>
  value !== null && unit !== null
    ? { value, unit: unit as '°C' | '°F' | 'pH' | 'aw' | '%' }
    : { answer: answer === true, seen };
