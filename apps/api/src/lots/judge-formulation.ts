import type { ControlPoint, Judged } from '@larderbook/contracts';
import { dependsOnFormulation, isStated, underConditions, type Formulation, type ScaleErrors } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { lotToRecordOn } from './lot-to-record-on';
import { scalesOf } from './scales-of';
import { phaseWithin, wentInto, type WentIn } from './what-went-in';

/** Do any of its limits ask something of the formula before they may be used? */
export const asksForFormulation = ({ limits }: Pick<ControlPoint, 'limits'>): boolean =>
  limits.some(({ limit }) => dependsOnFormulation(limit));

/** Verdicts with what their limits ask of the formula judged from what went in. */
export function judgedFor(judged: readonly Judged[], wentIn: WentIn | undefined): Judged[] {
  if (!judged.some(({ limit }) => dependsOnFormulation(limit))) return [...judged];
  const known = wentIn ? { composition: wentIn.composition, ...wentIn.phase, ...within(wentIn, wentIn.scales) } : {};
  return judged.map((one) => ({ ...one, verdict: underConditions(one.verdict, one.limit, known) }));
}

function within(wentIn: WentIn, scales: ScaleErrors | undefined): Pick<Formulation, 'scales' | 'least'> {
  if (!scales || !isStated(scales)) return {};
  const least = phaseWithin(wentIn, scales);
  return { scales, least: 'lacking' in least ? undefined : least };
}

/** What went in, and on which scales, where the control point depends on it. */
export async function wentInFor(tx: Tx, lotId: string, point: ControlPoint): Promise<WentIn | undefined> {
  if (!asksForFormulation(point)) return undefined;
  const { controlPoints } = await lotToRecordOn(tx, lotId);
  return { ...(await wentInto(tx, lotId)), scales: scalesOf(controlPoints) };
}
