import * as contract from '@larderbook/contracts';
import { minutesAfter, newId } from '../story';
import { gramsInPound, type LotBeingMade } from './lot-being-made';
import type { Settled } from './what-was-done';

/** What was done about the limit that was missed last, what becomes of the product, and its end. */
export function settle(lot: LotBeingMade, at: Date, { action, decisions }: Settled): void {
  const { story, reviewer, lotId } = lot;
  let left: contract.Deviation['undecided'] | undefined;
  const note = ({ undecided }: contract.Deviation) => (left = undecided);
  lot.tell(at, contract.recordCorrectiveAction).with((takenAt) => ({
    actionId: newId(at), deviationId: lot.deviation(), action, takenAt,
  }), note);
  decisions.forEach(({ pounds, destroyed, ...decided }, index) => {
    const made = minutesAfter(at, 3 + 4 * index);
    const dispositionId = newId(made);
    story.tell(made, reviewer, contract.recordDisposition).with(() => ({
      dispositionId, deviationIds: [lot.deviation()], lotId, ...decided,
      weight: pounds ? { value: pounds, unit: 'lb' } : { value: left?.value ?? 0, unit: left?.unit ?? 'lb' },
    }), note);
    if (!destroyed) return;
    lot.condemnedGrams += (pounds ?? 0) * gramsInPound;
    destroy(lot, dispositionId, destroyed, minutesAfter(made, lot.chance.between(40, 95)));
  });
  const closed = minutesAfter(at, 5 + 4 * decisions.length);
  story.tell(closed, reviewer, contract.closeDeviation).with(() => ({
    closingId: newId(closed), deviationId: lot.deviation(), note: '',
  }));
}

function destroy(lot: LotBeingMade, dispositionId: string, method: string, at: Date): void {
  lot.tell(at, contract.recordDestruction).with((takenAt) => ({ destructionId: newId(at), dispositionId, takenAt, method }));
}
