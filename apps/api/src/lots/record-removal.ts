import { Injectable } from '@nestjs/common';
import type { InputOf, recordRemoval } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect } from '../ledger/row-to-correct';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import { femtograms, keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { receiptLeft } from '../receiving/receipt-left';
import { atLeastZero, looseIn, weightsOfLot } from './lot-weights.queries';
import { checkEnough } from './take-from';

type Input = InputOf<typeof recordRemoval>;

/** The mass balance needs weight that left without being packed. */
@Injectable()
export class RecordRemoval {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<{ removalId: string }> {
    const { removalId, lotId, receiptId, kind, weight, note, takenAt } = input;
    const sent = { id: removalId, kind: 'removal', subject: lotId ?? receiptId, request: input, happenedAt: takenAt };
    return this.once.run(by, sent, async (tx, at) => {
      const { amending, givenBack } = await removalToCorrect(tx, input);
      const { left, code } = await whatIsLeft(tx, input);
      checkEnough(weight, left + givenBack, code);
      const entry = { id: removalId, lotId, receiptId, kind, note, takenAt: new Date(takenAt), station: by.station };
      await tx.removalRow.create({ data: { ...keptBy(by, at), ...entry, ...keepWeight(weight), ...amending } });
      return { removalId };
    });
  }
}

/** The weight of the corrected row is available again. */
async function removalToCorrect(tx: Tx, { amends, reason, lotId, receiptId }: Input) {
  if (!amends) return { givenBack: 0n };
  const row = await tx.removalRow.findFirst({
    where: { id: amends, lotId: lotId ?? null, receiptId: receiptId ?? null },
    select: { grams: true },
  });
  if (!row) throw new Problem('not-found', told('nothing-taken-out'));
  return { amending: await rowToCorrect(tx, 'removal', { amends, reason }), givenBack: femtograms(row.grams) };
}

async function whatIsLeft(tx: Tx, { lotId, receiptId }: Input): Promise<{ left: bigint; code: string }> {
  if (receiptId) {
    const { row, leftFemto } = await receiptLeft(tx, receiptId);
    return { left: leftFemto, code: row.code };
  }
  const lot = lotId ? await tx.lot.findFirst({ where: { id: lotId }, select: { id: true, code: true } }) : null;
  if (!lot) throw new Problem('not-found', told('no-such-lot'));
  return { left: atLeastZero(looseIn(await weightsOfLot(tx, lot.id))), code: lot.code };
}
