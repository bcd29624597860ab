import type { ControlPoint, ControlPointOnLot, Judged } from '@larderbook/contracts';
import { stretchesOf } from '@larderbook/haccp';
import { contextOf, type PointRecords } from './judge-control-point';
import { curveOf } from './judge-reading';

export type Band = ControlPointOnLot['bands'][number];

/** The stages are those of the probe whose verdict governs. */
export function bandsOf(point: ControlPoint, records: PointRecords, judged: readonly Judged[]): Band[] {
  if (point.takenAs !== 'curve') return [];
  const curve = curveOf(records.readings);
  return judged.flatMap(({ limitId, limit, verdict }) =>
    stretchesOf(limit, verdict, curve, contextOf(records)).map((stretch) => ({ ...stretch, limitId })),
  );
}
