import { Injectable } from '@nestjs/common';
import type { InputOf, recordDisposition } from '@larderbook/contracts';
import { massOf, sayMass, type EnteredMass } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import { Database, type Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import { keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { deviationToSettle } from './deviation-to-settle';
import { showDeviation } from './deviations.queries';
import { weightAtStake } from './weight-at-stake';

/** What becomes of the product; one decision for each deviation. */
@Injectable()
export class RecordDisposition {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordDisposition>, by: Person) {
    const { dispositionId, deviationId, decision, basis } = input;
    const sent = { id: dispositionId, kind: 'disposition', subject: deviationId, request: input };
    await this.once.run(by, sent, async (tx, at) => {
      const { hasDisposition } = await deviationToSettle(tx, deviationId);
      if (hasDisposition) throw new Problem('deviation-already-settled');
      const weight = await weightWithin(tx, deviationId, input.weight);
      await tx.disposition.create({
        data: { ...keptBy(by, at), ...weight, id: dispositionId, deviationId, decision, basis },
      });
      return { dispositionId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}

/**
 * The weight is left out only when there is no product to decide about: nothing was put in, or all of it has gone
 * elsewhere.
 */
async function weightWithin(tx: Tx, deviationId: string, entered: EnteredMass | undefined) {
  const stake = await weightAtStake(tx, deviationId);
  if (!entered) {
    if (stake === 0n) return { weightValue: 0, weightUnit: 'g', grams: 0 };
    const detail = `Say how much the decision is about: there are ${sayMass(stake, 'kg')}.`;
    throw new Problem('invalid-input', { detail, errors: [{ pointer: '#/weight', detail }] });
  }
  if (massOf(entered) > stake) {
    const there = sayMass(stake, entered.unit, 3, 'down');
    throw new Problem('more-than-there-is', {
      detail: `The decision is about ${entered.value} ${entered.unit}, but there are ${there}.`,
      figures: { asked: `${entered.value} ${entered.unit}`, there },
    });
  }
  return keepWeight(entered);
}
