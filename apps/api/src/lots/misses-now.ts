import type { Account, Deviation, Judged } from '@larderbook/contracts';
import { isSameVerdict, type Verdict } from '@larderbook/haccp';
import type { DeviationBehind } from '../deviations/deviations-behind';
import { aboutDeviation } from '../deviations/what-it-is-about';
import type { Tx } from '../platform/database';
import { isOfReading } from './is-settled';
import { judgedFor } from './judge-formulation';
import { judgePoints, type PointOnLot } from './judge-points';
import { cookSeen } from './cook-seen';
import { judgeReading } from './judge-reading';
import { judgedWhenClosed } from './judged-when-closed';
import { readingsThatCount, readLots, type LotRows } from './lot-rows';
import { rootsOf } from './reading-roots';

export type MissNow = { description: Account; verdict: Verdict };

/**
 * A miss grows with every reading. A closed deviation shows what people decided about; one opened by hand stays as it
 * is. A miss that is now met keeps its first figures, because a limit that is met heads no deviation.
 */
export function missesNow(rows: LotRows, points: readonly PointOnLot[]): ReadonlyMap<string, MissNow> {
  return new Map(
    rows.deviations.flatMap((deviation) => {
      const found = points.find(({ point }) => point.controlPointId === deviation.controlPointId);
      if (!found || !deviation.isOwn || !deviation.verdict) return [];
      const now = judgedNow(deviation, found, rows).find(({ limitId }) => limitId === deviation.limitId);
      if (!now) return [];
      const { verdict } = now;
      const isMissed = verdict.kind === 'missed';
      const description = aboutDeviation(isMissed ? { ...deviation.openedWith, verdict } : deviation.openedWith);
      return [[deviation.deviationId, { description, verdict }]];
    }),
  );
}

function judgedNow({ dedupeKey, limitId, isOpen, closedSeq }: DeviationBehind, found: PointOnLot, rows: LotRows): readonly Judged[] {
  const { point, judged } = found;
  switch (point.takenAs) {
    case 'weighings':
      return judged;
    case 'curve':
      return isOpen || closedSeq === null ? judged : judgedWhenClosed(point, rows, closedSeq);
    case 'value':
    case 'attestation': {
      const roots = rootsOf(rows.readings);
      const reading = readingsThatCount(rows.readings).find(({ id }) => isOfReading(dedupeKey, roots.get(id), limitId ?? ''));
      return reading ? judgedFor(judgeReading(point, reading, cookSeen(point, rows)), rows.wentIn) : [];
    }
  }
}

export async function withMissNow(tx: Tx, deviations: readonly Deviation[], now?: Date): Promise<Deviation[]> {
  const lotIds = deviations.flatMap(({ lot, limit }) => (lot && limit ? lot.lotId : []));
  const lots = await readLots(tx, [...new Set(lotIds)]);
  const misses = new Map(lots.flatMap((rows) => [...missesNow(rows, judgePoints(rows, now))]));
  return deviations.map((deviation) => {
    const miss = misses.get(deviation.deviationId);
    const { verdict } = deviation;
    if (!miss || !verdict || isSameVerdict(verdict, miss.verdict)) return deviation;
    return { ...deviation, ...miss, openedWith: { verdict } };
  });
}
