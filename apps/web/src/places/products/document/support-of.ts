import type { PlanContent } from '@larderbook/contracts';
import { saySupport } from '@larderbook/haccp';

/** What a plan says of the figures it rests on, in sentences: its adopter confirms them with the signature. */
export const supportOf = ({ controlPoints }: PlanContent): string[] =>
  controlPoints.flatMap(({ name, limits }) => limits.flatMap(({ limit }) => saySupport(limit.source).map((says) => `${name}: ${says}`)));
