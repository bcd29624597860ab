import type { ControlPoint, CorrectiveActionForm } from '@larderbook/contracts';
import type { Tx } from '../platform/database';

/**
 * 9 CFR 417.3(a) is for missed limits of critical points. Without a point, or opened by hand, a deviation is
 * unforeseen: 417.3(b).
 */
export function formOfAction(kind: ControlPoint['kind'] | undefined, isMiss: boolean): CorrectiveActionForm {
  if (!kind || !isMiss) return 'unforeseen';
  return kind;
}

type About = { kind: ControlPoint['kind'] | null; isMiss: boolean; recurs: boolean };

export async function actionAskedFor(tx: Tx, deviationId: string) {
  const [about] = await tx.$queryRaw<About[]>`
    SELECT d.verdict IS NOT NULL AS "isMiss",
      (SELECT point ->> 'kind' FROM lot l JOIN plan n ON n.id = l.plan_id, jsonb_array_elements(n.content -> 'controlPoints') point
        WHERE l.id = d.lot_id AND point ->> 'controlPointId' = d.control_point_id::text) AS kind,
      EXISTS (SELECT FROM deviation e WHERE e.control_point_id = d.control_point_id AND e.number < d.number
        AND e.subject_id IS DISTINCT FROM d.subject_id AND e.recorded_at >= d.recorded_at - interval '90 days') AS recurs
    FROM deviation d WHERE d.id = ${deviationId}::uuid`;
  return { form: formOfAction(about?.kind ?? undefined, about?.isMiss === true), recurs: about?.recurs === true };
}
