import type { ControlPoint } from '@larderbook/contracts';
import type { PointForecast } from '@larderbook/haccp';
import { cookSeen } from './cook-seen';
import { bandsOf, type Band } from './bands-of';
import { forecastAt } from './forecast-at';
import { isSettled } from './is-settled';
import { judgeControlPoint, type JudgedPoint, type PointRecords } from './judge-control-point';
import { readingsThatCount, type LotRows } from './lot-rows';
import { recordsAt } from './records-at';

export type PointOnLot = JudgedPoint & {
  point: ControlPoint;
  records: PointRecords;
  endedAt?: Date;
  isSettled: boolean;
  openDeviationId?: string;
  bands: Band[];
  /** Advice: nothing else here is derived from it. */
  forecast?: PointForecast;
};

/** In the order of the plan. */
export function judgePoints(rows: LotRows, now?: Date): PointOnLot[] {
  const readings = readingsThatCount(rows.readings);
  return rows.content.controlPoints.map((point) => {
    const records = recordsAt(point, readings, rows, now);
    records.cook = cookSeen(point, rows);
    const judged = judgeControlPoint(point, records);
    const open = rows.deviations.find(({ isOwn, isOpen, controlPointId }) => isOwn && isOpen && controlPointId === point.controlPointId);
    return {
      ...judged,
      point,
      records,
      endedAt: records.endedAt,
      isSettled: isSettled(point, judged, rows),
      openDeviationId: open?.deviationId,
      bands: bandsOf(point, records, judged.judged),
      forecast: forecastAt(point, records),
    };
  });
}
