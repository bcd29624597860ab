import { lacksChillStart, lacksFreezingStart, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { conditionsLeftOut, isStirred } from '@larderbook/haccp';
import { codeOf, type LimitTeller } from '@larderbook/messages';
import { told, type Told } from '../platform/told';

type MadeBy = { name: string; process: PlanContent['process'] };

/** What its owner should know before adopting a plan; it does not keep from adopting. */
export const planWarnings = ({ controlPoints, process }: PlanContent, product: MadeBy | undefined, limits: LimitTeller): Told[] => [
  ...(product && product.process !== process
    ? [
        told('made-otherwise', {
          process: { code: codeOf('process', process) },
          product: product.name,
          made: { code: codeOf('process', product.process) },
        }),
      ]
    : []),
  ...controlPoints.flatMap((point) => withoutTheirConditions(point, limits)),
  ...controlPoints.filter((point) => lacksChillStart(point, controlPoints)).map(withoutChillStart),
  ...controlPoints.filter((point) => lacksFreezingStart(point, controlPoints)).map(withoutFreezingStart),
  ...controlPoints.filter(({ piece }) => piece && isStirred(piece)).map(withoutCore),
];

/** Judged without what its source asks for, a figure may be met by a product it was never meant for. */
const withoutTheirConditions = ({ name, limits }: ControlPoint, { sayCondition }: LimitTeller): Told[] =>
  limits.flatMap(({ limit }) => {
    const leftOut = conditionsLeftOut(limit).map(sayCondition).join('; ');
    if (leftOut === '') return [];
    return [told('source-asks-for-more', { point: name, leftOut })];
  });

/** It can then be shown by an early reading of the core alone, or not at all. */
const withoutChillStart = ({ name: point }: ControlPoint): Told => told('no-chill-start', { point });

/** The air of a freezer is cold whether or not the meat is in it. */
const withoutFreezingStart = ({ name: point }: ControlPoint): Told => told('no-freezing-start', { point });

const withoutCore = ({ name: point }: ControlPoint): Told => told('no-core', { point });
