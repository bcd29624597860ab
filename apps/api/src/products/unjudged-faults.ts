import type { PlanContent } from '@larderbook/contracts';
import type { FormulaInUse } from './formula-in-use';
import { pointsJudging } from './points-judging';

type Line = Pick<FormulaInUse['lines'][number], 'itemName' | 'substance'>;

/** Restricted ingredients of a formula that no control point of the plan judges, in sentences; no lot starts so. */
export const unjudgedFaults = ({ controlPoints }: PlanContent, lines: readonly Line[]): string[] =>
  lines.flatMap(({ itemName, substance }) =>
    substance === undefined || pointsJudging(controlPoints, substance).length > 0
      ? []
      : [
          `${itemName} holds ${substance}, and no control point of the plan judges it. ` +
            `Write one with a limit on ${substance}, recorded as weighings, and adopt the plan with it.`,
        ],
  );
