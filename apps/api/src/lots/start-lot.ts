import { Injectable } from '@nestjs/common';
import type { InputOf, ReplyOf, startLot } from '@larderbook/contracts';
import { flagTimes } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { formulaInUse } from '../products/formula-in-use';
import { planInForce } from '../products/plan-in-force';
import { productsNow } from '../products/products-now';
import { unjudgedFaults } from '../products/unjudged-faults';
import { nextLotCode } from './next-lot-code';

type Input = InputOf<typeof startLot>;

/** A lot keeps its formula and plan, whatever is written or adopted later. */
@Injectable()
export class StartLot {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof startLot>> {
    const { lotId, productId, note } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(by, { id: lotId, kind: 'lot', request: input, happenedAt: input.takenAt }, async (tx, at) => {
      const { productCode, formulaId, planId } = await howItIsMade(tx, productId);
      const next = () => nextLotCode(tx, { productId, productCode, takenAt }, by);
      const code = input.code ? await free(tx, input.code) : await next();
      const flags = flagTimes({ takenAt: takenAt.getTime(), recordedAt: at.getTime() });
      const entry = { id: lotId, code, productId, formulaId, planId, note, flags, takenAt, station: by.station };
      await tx.lot.create({ data: { ...keptBy(by, at), ...entry } });
      return { lotId, code, flags };
    });
  }
}

async function howItIsMade(tx: Tx, productId: string) {
  const product = (await productsNow(tx, [productId])).get(productId);
  if (!product) throw new Problem('not-found', told('no-such-product'));
  const formula = await formulaInUse(tx, productId);
  if (!formula) throw new Problem('no-formula', told('product-has-no-formula', { product: product.name }));
  const plan = await planInForce(tx, productId);
  if (!plan) throw new Problem('no-plan-in-force', told('product-has-no-plan', { product: product.name }));
  const faults = unjudgedFaults(plan.content, formula.lines);
  if (faults.length > 0) throw new Problem('plan-incomplete', faults);
  return { productCode: product.code, formulaId: formula.formulaId, planId: plan.planId };
}

async function free(tx: Tx, code: string): Promise<string> {
  const taken = await tx.lot.findFirst({ where: { code }, select: { id: true } });
  if (taken) throw new Problem('lot-code-taken', told('code-is-taken', { code }));
  return code;
}
