import type { PlanContent } from '@larderbook/contracts';
import type { LimitTeller } from '@larderbook/messages';
import type { SayPlans } from './plan-words';

/** The adopter confirms these sentences with the signature. */
export const supportOf = ({ controlPoints }: PlanContent, say: SayPlans, { saySupport }: LimitTeller): string[] =>
  controlPoints.flatMap(({ name, limits }) =>
    limits.flatMap(({ limit }) => saySupport(limit.source).map((support) => say('support-of', { point: name, support }))),
  );
