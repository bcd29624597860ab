import { Injectable } from '@nestjs/common';
import type { InputOf, recordRemoval } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import { keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { receiptLeft } from '../receiving/receipt-left';
import { looseIn, lotHolds } from './lot-holds.queries';
import { checkEnough } from './take-from';

type Input = InputOf<typeof recordRemoval>;

/** Weight that left a lot or a delivery without being packed, so that the mass balance can account for it. */
@Injectable()
export class RecordRemoval {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<{ removalId: string }> {
    const { removalId, lotId, receiptId, kind, weight, note, takenAt } = input;
    return this.once.run(by, { id: removalId, kind: 'removal', subject: lotId ?? receiptId, request: input }, async (tx, at) => {
      const { left, code } = await whatIsLeft(tx, input);
      checkEnough(weight, left, code);
      await tx.removal.create({
        data: {
          establishmentId: by.establishmentId, id: removalId, lotId, receiptId, kind, ...keepWeight(weight), note,
          station: by.station, takenAt: new Date(takenAt), recordedAt: at, recordedBy: by.personId,
        },
      });
      return { removalId };
    });
  }
}

async function whatIsLeft(tx: Tx, { lotId, receiptId }: Input): Promise<{ left: bigint; code: string }> {
  if (receiptId) {
    const { row, leftFemto } = await receiptLeft(tx, receiptId);
    return { left: leftFemto, code: row.code };
  }
  const lot = lotId ? await tx.lot.findFirst({ where: { id: lotId }, select: { id: true, code: true } }) : null;
  if (!lot) throw new Problem('not-found', { detail: 'There is no such lot in this shop.' });
  return { left: looseIn(await lotHolds(tx, lot.id)), code: lot.code };
}
