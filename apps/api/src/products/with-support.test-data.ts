import type { PlanContent } from '@larderbook/contracts';
import { supportAsked, type CriticalLimit } from '@larderbook/haccp';

/** Words of an invented shop for a figure or an option that asks for some; any other limit as it is. */
export function withSupport<Limit extends CriticalLimit>(limit: Limit, own = 'Letter of our process authority, binder 3'): Limit {
  const { figure, option } = supportAsked(limit);
  return figure || option.length > 0 ? { ...limit, source: { ...limit.source, support: { own } } } : limit;
}

/** A plan that says what supports every figure that asks for it. */
export const supported = (content: PlanContent): PlanContent => ({
  ...content,
  controlPoints: content.controlPoints.map((point) => ({
    ...point,
    limits: point.limits.map(({ limitId, limit }) => ({ limitId, limit: withSupport(limit) })),
  })),
});
