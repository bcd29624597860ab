import * as contract from '@larderbook/contracts';
import { minutesAfter, newId } from '../story';
import { gramsInPound, type LotBeingMade } from './lot-being-made';

type FourParts = { cause: string; control: string; prevention: string; product: string };

/** What was done about the limit that was missed last: the four parts, what becomes of the product, and its end. */
export function settle(
  lot: LotBeingMade,
  at: Date,
  decision: 'release' | 'condemn',
  parts: FourParts,
  basis: string,
): void {
  const weight = { value: Math.floor((lot.wentInGrams() / gramsInPound) * 100) / 100, unit: 'lb' as const };
  const { story, who } = lot;
  lot.tell(at, contract.recordCorrectiveAction).with((takenAt) => ({
    actionId: newId(at), deviationId: lot.deviation(), ...parts, takenAt,
  }));
  story.tell(minutesAfter(at, 1), who.reviewer, contract.recordDisposition).with(() => ({
    dispositionId: newId(at), deviationId: lot.deviation(), decision, weight, basis,
  }));
  story.tell(minutesAfter(at, 2), who.reviewer, contract.closeDeviation).with(() => ({
    closingId: newId(at), deviationId: lot.deviation(), note: '',
  }));
}
