import type { ControlPoint, PlanContent } from '@larderbook/contracts';

type MadeBy = { name: string; process: string };

/** What its owner should know before adopting a plan; it does not keep from adopting. */
export const planWarnings = ({ controlPoints, process }: PlanContent, product: MadeBy | undefined): string[] => [
  ...(product && product.process !== process
    ? [`The plan is for ${process}, but ${product.name} is made by ${product.process}.`]
    : []),
  ...controlPoints.flatMap(unconfirmedFigures),
];

const unconfirmedFigures = ({ name, limits }: ControlPoint): string[] =>
  limits
    .map(({ limit }) => limit.source)
    .filter(({ confirmed }) => !confirmed)
    .map(({ citation }) => `${name}: nobody has confirmed its figure in the source itself (${citation}). Keep your own support on file.`);
