import { lacksChillStart, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { conditionsLeftOut, sayLimitCondition } from '@larderbook/haccp';

type MadeBy = { name: string; process: string };

/** What its owner should know before adopting a plan; it does not keep from adopting. */
export const planWarnings = ({ controlPoints, process }: PlanContent, product: MadeBy | undefined): string[] => [
  ...(product && product.process !== process
    ? [`The plan is for ${process}, but ${product.name} is made by ${product.process}.`]
    : []),
  ...controlPoints.flatMap(withoutTheirConditions),
  ...controlPoints.filter((point) => lacksChillStart(point, controlPoints)).map(withoutChillStart),
];

/** Judged without what its source asks for, a figure may be met by a product it was never meant for. */
const withoutTheirConditions = ({ name, limits }: ControlPoint): string[] =>
  limits.flatMap(({ limit }) => {
    const leftOut = conditionsLeftOut(limit).map(sayLimitCondition).join('; ');
    if (leftOut === '') return [];
    const asks = `${name}: the source of its figure asks for more than the plan does: ${leftOut}.`;
    return [`${asks} Choose the published limit again, or name your own support.`];
  });

/** It can then be shown by an early reading of the core alone, or not at all. */
const withoutChillStart = ({ name }: ControlPoint): string =>
  `${name}: its limit asks how soon chilling begins after cooking, but no control point records when it began. Add one ` +
  `that asks for the moment and follows the cook, and let the clock of ${name} start with it.`;
