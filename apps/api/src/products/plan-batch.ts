import { Injectable } from '@nestjs/common';
import type { InputOf, planBatch, PlanContent, ReplyOf } from '@larderbook/contracts';
import { divide, massOf, meatForPackages, percentParts, scaleFormula } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import { Database } from '../platform/database';
import { gramsOf } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { limitsIn } from '../platform/tell';
import { told } from '../platform/told';
import { dosesOf } from './doses';
import { formulaById, type FormulaInUse } from './formula-in-use';
import { planInForce } from './plan-in-force';

type Input = InputOf<typeof planBatch>;
type Batch = ReplyOf<typeof planBatch>;

const whole = 1_000_000n; // 100 % in ten-thousandths of a percent

/** Nothing is recorded. */
@Injectable()
export class PlanBatch {
  constructor(private readonly db: Database) {}

  run(input: Input, by: Person): Promise<Batch> {
    return this.db.transaction(by, async (tx) => {
      const formula = await formulaById(tx, input.formulaId);
      if (!formula) throw new Problem('not-found', told('no-such-formula'));
      const plan = await planInForce(tx, formula.productId);
      return batchOf(formula, meatFor(input, formula), plan?.content, limitsIn(by.voice));
    });
  }
}

/** Femtograms. The yield counts everything that goes in, so meat is its share of that. */
function meatFor(input: Input, formula: FormulaInUse): bigint {
  if ('trimmedMeat' in input) return massOf(input.trimmedMeat);
  const everything = meatForPackages(input.packages, massOf(input.net), formula.expectedYieldPercent);
  return divide(everything * whole, whole + ingredientParts(formula), 'up');
}

function batchOf(formula: FormulaInUse, meat: bigint, plan: PlanContent | undefined, limits: LimitTeller): Batch {
  const lines = scaleFormula(
    formula.lines.map((line) => ({ ...line, name: line.itemName })),
    meat,
  );
  const total = meat + lines.reduce((sum, { part, target }) => (part === 'ingredient' ? sum + target : sum), 0n);
  const packed = divide(total * (percentParts(formula.expectedYieldPercent) ?? 0n), whole, 'down');
  return {
    meatGrams: gramsOf(meat),
    totalGrams: gramsOf(total),
    expectedPackedGrams: gramsOf(packed),
    lines: lines.map(({ itemName, part, percent, target }) => ({ itemName, part, percent, grams: gramsOf(target) })),
    doses: dosesOf(lines, meat, plan, limits),
  };
}

const ingredientParts = ({ lines }: FormulaInUse): bigint =>
  lines.reduce((sum, { part, percent }) => (part === 'ingredient' ? sum + (percentParts(percent) ?? 0n) : sum), 0n);
