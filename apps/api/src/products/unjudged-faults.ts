import type { PlanContent } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import type { FormulaInUse } from './formula-in-use';
import { pointsJudging } from './points-judging';
import { told, type Told } from '../platform/told';

type Line = Pick<FormulaInUse['lines'][number], 'itemName' | 'substance'>;

/** No lot starts while a restricted ingredient goes unjudged. */
export const unjudgedFaults = ({ controlPoints }: PlanContent, lines: readonly Line[]): Told[] =>
  lines.flatMap(({ itemName, substance }) =>
    substance === undefined || pointsJudging(controlPoints, substance).length > 0
      ? []
      : [told('substance-not-judged', { item: itemName, substance: { code: codeOf('substance', substance) } })],
  );
