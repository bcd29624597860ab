import type { Account } from '@larderbook/contracts';
import { sentence } from '../platform/account';
import type { PointOnLot } from './judge-points';
import type { LotRows } from './lot-rows';

/** The first thing that keeps the lot from being packed and reviewed: what runs, else what comes first in the plan. */
export function whatIsNext({ wentIn }: LotRows, points: PointOnLot[]): Account | undefined {
  if (wentIn.inputs.length === 0) return [sentence('next-put-in-meat')];
  const open = points.filter(({ isSettled }) => !isSettled);
  const next = open.find(({ stands }) => stands === 'running') ?? open[0];
  if (!next) return undefined;
  const { name: point, monitoring } = next.point;
  if (next.stands === 'not-started') return [sentence('next-point', { point, what: monitoring.what })];
  if (next.point.takenAs === 'curve' && !next.endedAt && next.stands === 'missed') return [sentence('missed-goes-on', { point })];
  const doubt = next.judged.find(({ verdict }) => verdict.kind !== 'met');
  const why: Account = doubt ? [{ verdict: doubt.verdict, tells: 'next or because' }] : [];
  return [sentence('point-stands', { point, stands: next.stands }), ...why];
}
