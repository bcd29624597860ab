import type { ControlPoint, Judged } from '@larderbook/contracts';
import { dependsOnFormulation, isStated, underConditions, type Formulation, type ScaleErrors } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { lotToRecordOn } from './lot-to-record-on';
import { scalesOf } from './scales-of';
import { phaseWithin, wentInto, type WentIn } from './what-went-in';

/** Some limits may be used only under conditions on the formula. */
export const asksForFormulation = ({ limits }: Pick<ControlPoint, 'limits'>): boolean =>
  limits.some(({ limit }) => dependsOnFormulation(limit));

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

/** Undefined where the control point does not depend on it. */
export async function wentInFor(tx: Tx, lotId: string, point: ControlPoint): Promise<WentIn | undefined> {
  if (!asksForFormulation(point)) return undefined;
  const { controlPoints } = await lotToRecordOn(tx, lotId);
  return { ...(await wentInto(tx, lotId)), scales: scalesOf(controlPoints) };
}
