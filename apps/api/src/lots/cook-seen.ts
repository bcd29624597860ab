import { asksForHumidity, ofProduct, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { isOfKind, type CookSeen } from '@larderbook/haccp';
import { curveOf } from './judge-reading';
import { readingsThatCount, type LotRows } from './lot-rows';

type Rows = Pick<LotRows, 'readings' | 'stageEnds'> & { content: Pick<PlanContent, 'controlPoints'> };

/** Undefined where the point asks for no humidity. */
export function cookSeen(point: ControlPoint, { readings, stageEnds, content }: Rows): CookSeen | undefined {
  const cook = content.controlPoints.find(({ controlPointId }) => controlPointId === point.follows);
  if (!asksForHumidity(point) || !cook) return undefined;
  const own = readingsThatCount(readings).filter(({ controlPointId }) => controlPointId === cook.controlPointId);
  return {
    readings: curveOf(ofProduct(cook, own)),
    endedAt: stageEnds.find(({ controlPointId }) => controlPointId === cook.controlPointId)?.takenAt.getTime(),
    tables: cook.limits.flatMap(({ limit }) => (isOfKind(limit, 'dwell') ? [limit] : [])),
    error: cook.errors?.temperature,
  };
}
