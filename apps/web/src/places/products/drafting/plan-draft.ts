import { controlPoint, hazard, planContent, recordPlan, step, surroundings, type Plan, type PlanContent } from '@larderbook/contracts';
import { z } from 'zod';
import { check, type FieldErrors } from '../../../api/check';
import { newId } from '../../../outbox/new-id';
import { useKeptDraft } from '../kept-draft';

const anything = z.string();
const stepDraft = step.extend({ name: anything, hazards: z.array(hazard.extend({ what: anything })) });
const pointDraft = controlPoint.extend({
  name: anything,
  hazard: anything,
  limits: z.array(controlPoint.shape.limits.element),
  frequency: z.union([z.object({ everyMinutes: z.number() }), z.object({ timesInALot: z.number() })]).optional(),
  surroundings: surroundings.extend({ name: anything }).optional(),
  monitoring: z.object({ what: anything, how: anything, howOften: anything, who: anything }),
  correctiveAction: anything,
});

/** Fields may still be empty. The id belongs to exactly these words. */
export const planDraft = z.object({
  planId: z.uuid(),
  /** Absent for a plan begun anew. */
  basedOn: z.number().optional(),
  /** The title of the plan it started from. */
  starter: z.string().optional(),
  /** Once a save was tried, what is missing is marked. */
  tried: z.boolean(),
  content: planContent.extend({
    title: anything,
    intendedUse: anything,
    steps: z.array(stepDraft),
    controlPoints: z.array(pointDraft),
  }),
});
export type PlanDraft = z.output<typeof planDraft>;

export const usePlanDraft = (productId: string) => useKeptDraft(planDraft, `plan.${productId}`);

export const draftOfPlan = ({ version, content }: Pick<Plan, 'version' | 'content'>): PlanDraft => ({
  planId: newId(),
  basedOn: version,

  tried: false,
  content,
});

export const draftOfContent = (content: PlanContent, starter?: string): PlanDraft => ({
  planId: newId(),
  starter,
  tried: false,
  content: withOwnIds(content),
});

export const edited = (draft: PlanDraft, content: PlanContent): PlanDraft => ({ ...draft, planId: newId(), content });

/** Errors are keyed by field, as in `steps.0.name`. */
export function checkPlan({ content }: PlanDraft, productId: string) {
  const { value, errors } = check(recordPlan.body, { productId, content });
  return value ? { value } : { errors: errorsUnder(errors, 'content') };
}

/** The errors below `path`, keyed from there. */
export const errorsUnder = (errors: FieldErrors, path: string): FieldErrors =>
  Object.fromEntries(
    Object.entries(errors)
      .filter(([name]) => name.startsWith(`${path}.`))
      .map(([name, said]) => [name.slice(path.length + 1), said]),
  );

/** A starter plan may be taken for two products, and their records must not mix. */
export function withOwnIds(content: PlanContent): PlanContent {
  const ids = new Map<string, string>();
  const own = (id: string) => ids.get(id) ?? ids.set(id, newId()).get(id) ?? id;
  return {
    ...content,
    steps: content.steps.map((each) => ({ ...each, stepId: own(each.stepId) })),
    controlPoints: content.controlPoints.map((point) => ({
      ...point,
      controlPointId: own(point.controlPointId),
      stepId: own(point.stepId),
      ...(point.follows !== undefined && { follows: own(point.follows) }),
      limits: point.limits.map(({ limit }) => ({ limitId: newId(), limit })),
    })),
  };
}
