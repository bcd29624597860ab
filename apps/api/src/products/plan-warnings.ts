import { lacksChillStart, lacksFreezingStart, type ControlPoint, type PlanContent } from '@larderbook/contracts';
import { conditionsLeftOut, isStirred } from '@larderbook/haccp';
import { codeOf, type LimitTeller } from '@larderbook/messages';
import { told, type Told } from '../platform/told';

type MadeBy = { name: string; process: PlanContent['process'] };

/** A warning does not keep a plan from being adopted. */
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

/** Without its conditions, a product may meet a figure never meant for it. */
const withoutTheirConditions = ({ name, limits }: ControlPoint, { sayCondition }: LimitTeller): Told[] =>
  limits.flatMap(({ limit }) => {
    const leftOut = conditionsLeftOut(limit).map(sayCondition).join('; ');
    if (leftOut === '') return [];
    return [told('source-asks-for-more', { point: name, leftOut })];
  });

/** Without a recorded start, only an early core reading shows when the chill began. */
const withoutChillStart = ({ name: point }: ControlPoint): Told => told('no-chill-start', { point });

/** The air of a freezer is cold with or without the meat. */
const withoutFreezingStart = ({ name: point }: ControlPoint): Told => told('no-freezing-start', { point });

const withoutCore = ({ name: point }: ControlPoint): Told => told('no-core', { point });
