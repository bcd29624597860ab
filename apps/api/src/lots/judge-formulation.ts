import type { ControlPoint, Judged } from '@larderbook/contracts';
import { dependsOnFormulation, underConditions } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { wentInto, type WentIn } from './what-went-in';

/** Do any of its limits ask something of the formula before they may be used? */
export const asksForFormulation = ({ limits }: Pick<ControlPoint, 'limits'>): boolean =>
  limits.some(({ limit }) => dependsOnFormulation(limit));

/** Verdicts with what their limits ask of the formula judged from what went in. */
export const judgedFor = (judged: readonly Judged[], wentIn: WentIn | undefined): Judged[] =>
  judged.map((one) => ({
    ...one,
    verdict: underConditions(one.verdict, one.limit.conditions, { composition: wentIn?.composition, ...wentIn?.phase }),
  }));

/** What went in, where the control point depends on it. */
export const wentInFor = async (tx: Tx, lotId: string, point: ControlPoint): Promise<WentIn | undefined> =>
  asksForFormulation(point) ? wentInto(tx, lotId) : undefined;
