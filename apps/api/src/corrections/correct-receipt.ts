import { Injectable } from '@nestjs/common';
import type { correctReceipt, InputOf, Receipt } from '@larderbook/contracts';
import { flagTimes, roundedMass, massOf } from '@larderbook/haccp';
import { openDeviation } from '../deviations/open-deviation';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect } from '../ledger/row-to-correct';
import { dedupeKeyNow } from '../lots/open-for-misses';
import { Database, type Tx } from '../platform/database';
import { femtograms } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { checkDelivery } from '../receiving/check-delivery';
import { judgeDelivery } from '../receiving/judge-delivery';
import { knownItem, rowOfDelivery } from '../receiving/record-receipt';
import { missOf } from '../receiving/miss-of';
import { receiptLeft } from '../receiving/receipt-left';
import { showReceipt } from '../receiving/receipts.queries';
import { judgeWhatWasMade } from './judge-what-was-made';

type Input = InputOf<typeof correctReceipt>;
type Before = Awaited<ReturnType<typeof receiptLeft>>;

/** The delivery is judged again, and everything made of it. */
@Injectable()
export class CorrectReceipt {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: Input, by: Person): Promise<Receipt> {
    const { correctionId, amends, receipt } = input;
    const sent = { id: correctionId, kind: 'receipt', request: input, happenedAt: receipt.takenAt };
    const { receiptId } = await this.once.run(by, sent, async (tx, at) => {
      const amending = await rowToCorrect(tx, 'receipt', input);
      if (!amending) throw new Problem('not-found');
      const before = await receiptLeft(tx, amending.firstId);
      const item = await knownItem(tx, receipt);
      checkDelivery(receipt, item);
      checkStillFits(receipt, before, item);
      const judged = judgeDelivery(receipt, item);

      const times = { takenAt: Date.parse(receipt.takenAt), recordedAt: await firstRecorded(tx, amending.firstId) };
      const row = rowOfDelivery({ input: receipt, judged, code: before.row.code }, flagTimes(times), by, at);
      await tx.receiptRow.create({ data: { ...row, ...amending, id: correctionId } });
      if (judged.isMiss) await openMiss(tx, { input, judged, firstId: amending.firstId }, by, at);
      const made = { receiptId: amending.firstId, subjectId: correctionId, takenAt: new Date(receipt.takenAt) };
      await judgeWhatWasMade(tx, made, by, at);
      return { receiptId: amending.firstId, amends };
    });
    return this.db.transaction(by, (tx) => showReceipt(tx, receiptId));
  }
}

/** Only the first record can be late; a correction always comes later. */
async function firstRecorded(tx: Tx, firstId: string): Promise<number> {
  const first = await tx.receiptRow.findFirst({ where: { id: firstId }, select: { recordedAt: true } });
  if (!first) throw new Problem('not-found');
  return first.recordedAt.getTime();
}

/** The delivery cannot weigh less than was taken from it, be refused, or become another kind of item. */
function checkStillFits({ weight, decision }: Input['receipt'], { row, leftFemto }: Before, item: { kind: string; name: string }): void {
  const taken = row.decision === 'refused' ? 0n : femtograms(row.grams) - leftFemto;
  if (taken <= 0n) return;
  const { code } = row;
  const figures = { taken: roundedMass(taken, weight.unit, 3, 'up'), code };
  if (massOf(weight) < taken) throw new Problem('still-in-use', told('more-was-taken', figures));
  if (decision === 'refused') throw new Problem('still-in-use', told('taken-before-refused', figures));
  if (item.kind !== row.item.kind) {
    throw new Problem('wrong-item', told('taken-as-another-kind', { ...figures, used: row.item.kind, name: item.name, kind: item.kind }));
  }
}

type Missed = { input: Input; judged: ReturnType<typeof judgeDelivery>; firstId: string };

async function openMiss(tx: Tx, { input, judged, firstId }: Missed, by: Person, at: Date): Promise<void> {
  const { limit, verdict } = judged;
  if (!verdict) return;
  const dedupeKey = await dedupeKeyNow(tx, missOf(firstId), verdict);
  const about = { receiptId: firstId, subjectId: input.correctionId, limit, verdict, takenAt: input.receipt.takenAt };
  await openDeviation(tx, { dedupeKey, ...about }, by, at);
}
