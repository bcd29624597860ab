import type { Flag } from '@larderbook/contracts';
import type { FormulaInUse } from '../products/formula-in-use';

type Went = { part: 'meat' | 'ingredient'; itemId: string };

/** A slip or a change: the item is in the product, so it is kept. */
export const flagNotInFormula = (formula: FormulaInUse | undefined, { part, itemId }: Went): Flag[] =>
  formula?.lines.some((line) => line.part === part && line.itemId === itemId) ? [] : ['not-in-formula'];
