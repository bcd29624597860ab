import { lacksChillStart, lacksFreezingStart, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { conditionsLeftOut, isStirred, sayLimitCondition } from '@larderbook/haccp';

type MadeBy = { name: string; process: string };

/** What its owner should know before adopting a plan; it does not keep from adopting. */
export const planWarnings = ({ controlPoints, process }: PlanContent, product: MadeBy | undefined): string[] => [
  ...(product && product.process !== process ? [`The plan is for ${process}, but ${product.name} is made by ${product.process}.`] : []),
  ...controlPoints.flatMap(withoutTheirConditions),
  ...controlPoints.filter((point) => lacksChillStart(point, controlPoints)).map(withoutChillStart),
  ...controlPoints.filter((point) => lacksFreezingStart(point, controlPoints)).map(withoutFreezingStart),
  ...controlPoints.filter(({ piece }) => piece && isStirred(piece)).map(withoutCore),
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

/** The air of a freezer is cold whether or not the meat is in it. */
const withoutFreezingStart = ({ name }: ControlPoint): string =>
  `${name}: the time is counted by the air of the freezer, but nothing records when the meat went in, and without that ` +
  `nothing is met. Add a control point that asks for the moment, and let the clock of ${name} start with it.`;

const withoutCore = ({ name }: ControlPoint): string =>
  `${name}: what is read is stirred or pumped and has no core, so no reading is doubted for how fast it rises or falls. ` +
  'Say so only of what flows, such as a sauce without pieces; a probe left in the air would not be noticed by its speed.';
