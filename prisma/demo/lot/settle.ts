import * as contract from '@larderbook/contracts';
import { minutesAfter, newId } from '../story';
import { gramsInPound, type LotBeingMade } from './lot-being-made';

type Decided = Pick<contract.InputOf<typeof contract.recordDisposition>, 'decision' | 'reason' | 'basis'> & {
  /** Pounds; left out, all that is left to decide. */
  pounds?: number;
};

/** What was done about the limit that was missed last, what becomes of the product, and its end. */
export function settle(lot: LotBeingMade, at: Date, action: contract.CorrectiveAction, decisions: readonly Decided[]): void {
  const { story, who, lotId } = lot;
  let left: contract.Deviation['undecided'] | undefined;
  const note = ({ undecided }: contract.Deviation) => (left = undecided);
  lot.tell(at, contract.recordCorrectiveAction).with((takenAt) => ({
    actionId: newId(at), deviationId: lot.deviation(), action, takenAt,
  }), note);
  decisions.forEach(({ pounds, ...decided }, index) => {
    const made = minutesAfter(at, 1 + index);
    const dispositionId = newId(made);
    story.tell(made, who.reviewer, contract.recordDisposition).with(() => ({
      dispositionId, deviationIds: [lot.deviation()], lotId, ...decided,
      weight: pounds ? { value: pounds, unit: 'lb' } : { value: left?.value ?? 0, unit: left?.unit ?? 'lb' },
    }), note);
    if (decided.decision === 'condemn') {
      lot.condemnedGrams += (pounds ?? 0) * gramsInPound;
      destroy(lot, dispositionId, minutesAfter(made, 90));
    }
  });
  const closed = minutesAfter(at, 2 + decisions.length);
  story.tell(closed, who.reviewer, contract.closeDeviation).with(() => ({
    closingId: newId(closed), deviationId: lot.deviation(), note: '',
  }));
}

function destroy(lot: LotBeingMade, dispositionId: string, at: Date): void {
  lot.tell(at, contract.recordDestruction).with((takenAt) => ({
    destructionId: newId(at), dispositionId, takenAt,
    method: 'Cut up, dyed green and put into the locked rendering barrel; the renderer collects it.',
  }));
}
