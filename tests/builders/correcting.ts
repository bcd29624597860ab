import * as contract from '@larderbook/contracts';
import type { InputOf, Receipt, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { ask } from '../support/ask';
import { done, type Worker } from './a-shop';

type Voiding = InputOf<typeof contract.voidRecord>['what'];

/** Strikes a record out, with a reason that is good enough unless another is given. */
export const strike = (by: Worker, what: Voiding, amends: string, reason = 'Never happened.') =>
  ask(by, contract.voidRecord, { voidId: v7(), what, amends, reason });

export const showReceipt = (by: Worker, receiptId: string): Promise<Receipt> => done(ask(by, contract.showReceipt, { receiptId }));

/** The delivery as it stands, with what is said otherwise. */
export async function correctReceipt(
  by: Worker,
  receiptId: string,
  otherwise: Partial<InputOf<typeof contract.recordReceipt>>,
  { amends, reason = 'Typed wrongly.' }: { amends?: string; reason?: string } = {},
) {
  const now = await showReceipt(by, receiptId);
  const { item, supplier, supplierLot, weight, decision, temperature, fractionPercent, made } = now;
  const receipt = {
    ...{ itemId: item.itemId, supplierId: supplier.supplierId, supplierLot, decision, temperature, fractionPercent },
    ...{ weight: { value: weight.value, unit: weight.unit }, reason: now.reason, takenAt: made.at },
    ...otherwise,
  };
  return ask(by, contract.correctReceipt, { correctionId: v7(), amends: amends ?? now.rowId, reason, receipt });
}

export const packingsOf = async (by: Worker) =>
  (await done<ReplyOf<typeof contract.listPackings>>(ask(by, contract.listPackings, { left: 'any' }))).packings;
