import { Injectable } from '@nestjs/common';
import type { CorrectiveAction, InputOf, recordCorrectiveAction } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect } from '../ledger/row-to-correct';
import { Database, type Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { deviationToSettle } from './deviation-to-settle';
import { showDeviation } from './deviations.queries';
import { actionAskedFor } from './form-of-action';

@Injectable()
export class RecordCorrectiveAction {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordCorrectiveAction>, by: Person) {
    const { actionId, deviationId, action, takenAt, amends } = input;
    const sent = { id: actionId, kind: 'corrective-action', subject: deviationId, request: input, happenedAt: takenAt };
    await this.once.run(by, sent, async (tx, at) => {
      const amending = amends ? await actionToCorrect(tx, input) : undefined;
      if (!amending) await deviationToSettle(tx, deviationId);
      await checkAction(tx, deviationId, action);
      const { form, ...parts } = action;
      const entry = { id: actionId, deviationId, form, parts, takenAt, ...amending };
      await tx.correctiveAction.create({ data: { ...keptBy(by, at), ...entry } });
      return { actionId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}

/** An action can be corrected even when the deviation is closed. */
async function actionToCorrect(tx: Tx, { deviationId, amends, reason }: InputOf<typeof recordCorrectiveAction>) {
  const found = await tx.correctiveAction.findFirst({ where: { id: amends, deviationId }, select: { id: true } });
  if (!found) throw new Problem('not-found', told('no-action-to-correct'));
  return rowToCorrect(tx, 'corrective_action', { amends, reason });
}

/** Throws `other-form`, or `say-what-will-differ` when the control point deviated before. */
async function checkAction(tx: Tx, deviationId: string, action: CorrectiveAction): Promise<void> {
  const { form, recurs } = await actionAskedFor(tx, deviationId);
  if (action.form !== form) {
    throw new Problem('other-form', told('form-asked-for', { form }));
  }
  if (recurs && action.form !== 'unforeseen' && action.different === undefined) {
    throw new Problem('say-what-will-differ', [], [{ pointer: '#/action/different', ...told('what-will-differ') }]);
  }
}
