import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { withPublishedConditions, type CriticalLimit } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import { v7 } from 'uuid';

export type SayStarter = SayOf<'starter-plans'>;

type Step = PlanContent['steps'][number];
export type StarterStep = Omit<Step, 'stepId'> & { key: string };
/** `at` and `follows` are keys; `limits` get their ids with the copy. */
export type StarterPoint = Omit<ControlPoint, 'controlPointId' | 'stepId' | 'follows' | 'limits'> & {
  key: string;
  at: string;
  follows?: string;
  limits: CriticalLimit[];
};

/** Steps and control points name one another by key. */
export type StarterPlan = Omit<PlanContent, 'steps' | 'controlPoints'> & {
  about: string;
  steps: StarterStep[];
  controlPoints: StarterPoint[];
};

export function copyOf({ about: _about, steps, controlPoints, ...head }: StarterPlan): PlanContent {
  const stepIds = idsFor(steps);
  const pointIds = idsFor(controlPoints);
  return {
    ...head,
    steps: steps.map(({ key, ...step }) => ({ stepId: idOf(stepIds, key), ...step })),
    controlPoints: controlPoints.map(({ key, at, follows, limits, ...point }) => ({
      controlPointId: idOf(pointIds, key),
      stepId: idOf(stepIds, at),
      ...(follows && { follows: idOf(pointIds, follows) }),
      ...point,
      limits: limits.map((limit) => ({ limitId: v7(), limit: withPublishedConditions(limit) })),
    })),
  };
}

const idsFor = (keyed: readonly { key: string }[]): Map<string, string> => new Map(keyed.map(({ key }) => [key, v7()]));

function idOf(ids: ReadonlyMap<string, string>, key: string): string {
  const id = ids.get(key);
  if (!id) throw new Error(`A starter plan names “${key}”, which it does not have`);
  return id;
}
