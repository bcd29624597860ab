import type { PlanContent } from '@larderbook/contracts';

/** What its owner should know before adopting a plan; it does not keep from adopting. */
export function planWarnings({ controlPoints, process }: PlanContent, product: { name: string; process: string } | undefined): string[] {
  const unconfirmed = controlPoints.flatMap(({ name, limits }) =>
    limits
      .filter(({ limit }) => !limit.source.confirmed)
      .map(({ limit }) => `${name}: nobody has confirmed its figure in the source itself (${limit.source.citation}). Keep your own support for it on file.`),
  );
  const isOther = product !== undefined && product.process !== process;
  return isOther ? [`The plan is for ${process}, but ${product.name} is made by ${product.process}.`, ...unconfirmed] : unconfirmed;
}
