import * as contract from '@larderbook/contracts';
import { minutesAfter, newId } from '../story';
import { gramsInPound, type LotBeingMade } from './lot-being-made';
import { nextOpenDay } from '../working-days';
import type { Settled } from './what-was-done';

/** What was done about the limit that was missed last, what becomes of the product, and its end: the moment of that. */
export function settle(lot: LotBeingMade, at: Date, { action, decisions, waitsForALetter }: Settled): Date {
  const { story, reviewer, lotId } = lot;
  let left: contract.Deviation['undecided'] | undefined;
  const note = ({ undecided }: contract.Deviation) => (left = undecided);
  lot.tell(at, contract.recordCorrectiveAction).with(
    (takenAt) => ({
      actionId: newId(at),
      deviationId: lot.deviation(),
      action,
      takenAt,
    }),
    note,
  );
  const decided = waitsForALetter ? nextOpenDay(nextOpenDay(at, 7, 0), 10, 24) : at;
  decisions.forEach(({ pounds, destroyed, ...said }, index) => {
    const made = minutesAfter(decided, 3 + 4 * index);
    const dispositionId = newId(made);
    story.tell(made, reviewer, contract.recordDisposition).with(
      () => ({
        dispositionId,
        deviationIds: [lot.deviation()],
        lotId,
        ...said,
        weight: pounds ? { value: pounds, unit: 'lb' } : { value: left?.value ?? 0, unit: left?.unit ?? 'lb' },
      }),
      note,
    );
    if (!destroyed) return;
    lot.condemnedGrams += (pounds ?? 0) * gramsInPound;
    destroy(lot, dispositionId, destroyed, minutesAfter(made, lot.chance.between(40, 95)));
  });
  const closed = minutesAfter(decided, 5 + 4 * decisions.length);
  story.tell(closed, reviewer, contract.closeDeviation).with(() => ({
    closingId: newId(closed),
    deviationId: lot.deviation(),
    note: '',
  }));
  return closed;
}

function destroy(lot: LotBeingMade, dispositionId: string, method: string, at: Date): void {
  lot.tell(at, contract.recordDestruction).with((takenAt) => ({ destructionId: newId(at), dispositionId, takenAt, method }));
}
