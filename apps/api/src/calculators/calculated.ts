import type { CannotCalculate, Calculation } from '@larderbook/haccp';
import { Problem } from '../platform/problem';

export function calculated(outcome: Calculation | CannotCalculate): Calculation {
  if ('cannot' in outcome) throw new Problem('cannot-be-calculated', outcome.cannot);
  return outcome;
}
