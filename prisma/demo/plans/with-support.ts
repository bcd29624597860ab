import type { PlanContent } from '@larderbook/contracts';
import { supportAsked, type CriticalLimit } from '@larderbook/haccp';

/** What the invented shop has on file for figures that ask for it, by the kind of limit. */
const onFile: Partial<Record<CriticalLimit['kind'], string>> = {
  cooling:
    'Letter of our process authority of 9 September on chilling by these stages, with three logged chills of each product, folder 3 (invented)',
  freezing: 'Copy of the withdrawn table and a logger’s record of ten blocks, folder 4 (invented)',
  growth: 'Screening only, beside the stages; the same letter of 9 September, folder 3 (invented)',
};
const otherwise = 'Our own support, folder 5 (invented)';

/** The plan as its owner signs it: every figure that nobody read, or that its edition left behind, names its support. */
export const withSupport = (plan: PlanContent): PlanContent => ({
  ...plan,
  controlPoints: plan.controlPoints.map((point) => ({
    ...point,
    limits: point.limits.map(({ limitId, limit }) => ({ limitId, limit: supported(limit) })),
  })),
});

function supported(limit: CriticalLimit): CriticalLimit {
  const { figure, option } = supportAsked(limit);
  if (!figure && option.length === 0) return limit;
  return { ...limit, source: { ...limit.source, support: { own: onFile[limit.kind] ?? otherwise } } };
}
