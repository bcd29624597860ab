import { Injectable } from '@nestjs/common';
import { partsOfAction, type CorrectiveAction, type InputOf, type recordCorrectiveAction } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database, type Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { deviationToSettle } from './deviation-to-settle';
import { showDeviation } from './deviations.queries';
import { actionAskedFor } from './form-of-action';

/** What was done about a deviation, in the parts of its form, as often as there is something to add. */
@Injectable()
export class RecordCorrectiveAction {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordCorrectiveAction>, by: Person) {
    const { actionId, deviationId, action, takenAt } = input;
    const sent = { id: actionId, kind: 'corrective-action', subject: deviationId, request: input, happenedAt: takenAt };
    await this.once.run(by, sent, async (tx, at) => {
      await deviationToSettle(tx, deviationId);
      await checkAction(tx, deviationId, action);
      const { form, ...parts } = action;
      await tx.correctiveAction.create({ data: { ...keptBy(by, at), form, parts, id: actionId, deviationId, takenAt } });
      return { actionId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}

/** Throws `other-form`, and `say-what-will-differ` when the control point deviated before. */
async function checkAction(tx: Tx, deviationId: string, action: CorrectiveAction): Promise<void> {
  const { form, recurs } = await actionAskedFor(tx, deviationId);
  if (action.form !== form) {
    const asks = partsOfAction[form].map(({ asks: part }) => part.toLowerCase()).join('; ');
    throw new Problem('other-form', { detail: `This deviation asks for: ${asks}.` });
  }
  if (recurs && action.form !== 'unforeseen' && action.different === undefined) {
    throw new Problem('say-what-will-differ', {
      errors: [{ pointer: '#/action/different', detail: 'What will be different this time?' }],
    });
  }
}
