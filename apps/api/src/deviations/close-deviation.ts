import { Injectable } from '@nestjs/common';
import type { closeDeviation, InputOf } from '@larderbook/contracts';
import { sayMass } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { deviationToSettle } from './deviation-to-settle';
import { sayToDecide } from './deviations-behind';
import { showDeviation } from './deviations.queries';
import type { Concerned } from './held-products.queries';

/**
 * Closes a deviation once it has its corrective action and all of its product is decided; the hold ends with the last
 * one.
 */
@Injectable()
export class CloseDeviation {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof closeDeviation>, by: Person) {
    const { closingId, deviationId, note } = input;
    const sent = { id: closingId, kind: 'deviation-closing', subject: deviationId, request: input };
    await this.once.run(by, sent, async (tx, at) => {
      const { number, actions, isClosed, concerned } = await deviationToSettle(tx, deviationId);
      const toDecide = sayToDecide(concerned);
      const open = toDecide && `${toDecide} are still to be decided`;
      if (actions === 0) {
        const missing = ['its corrective action', ...(open ? [`decisions: ${open}`] : [])].join(' and ');
        throw new Problem('actions-missing', { detail: `Deviation ${number} still needs ${missing}.` });
      }
      if (open) throw undecided(number, open, isClosed, concerned);
      await tx.deviationClosing.create({ data: { ...keptBy(by, at), id: closingId, deviationId, note } });
      return { closingId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}

function undecided(number: number, open: string, isClosed: boolean, { undecided: mass, atStake, unit }: Concerned): Problem {
  const again = isClosed ? 'It is closed already; since then a weight was corrected or a decision voided. ' : '';
  return new Problem('product-undecided', {
    detail: `${again}Deviation ${number}: ${open}. What was lost on the way is recorded as a loss.`,
    figures: { undecided: sayMass(mass, unit, 3, 'up'), atStake: sayMass(atStake, unit, 3, 'up') },
  });
}
