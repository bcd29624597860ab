import { Injectable } from '@nestjs/common';
import type { InputOf, Receipt, recordReceipt } from '@larderbook/contracts';
import { flagTimes } from '@larderbook/haccp';
import { openDeviation } from '../deviations/open-deviation';
import { RecordOnce } from '../ledger/record-once';
import { Database, type Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import { keepVerdict } from '../platform/kept-verdict';
import { keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { itemsNow, type ItemNow } from '../products/items-now';
import { checkDelivery } from './check-delivery';
import { judgeDelivery, type JudgedDelivery } from './judge-delivery';
import { missOf } from './miss-of';
import { showReceipt } from './receipts.queries';
import { suppliersNow } from './suppliers-now';

type Input = InputOf<typeof recordReceipt>;

/** An accepted miss opens its deviation in the same transaction. */
@Injectable()
export class RecordReceipt {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: Input, by: Person): Promise<Receipt> {
    await this.once.run(by, { id: input.receiptId, kind: 'receipt', request: input, happenedAt: input.takenAt }, async (tx, at) => {
      const item = await knownItem(tx, input);
      checkDelivery(input, item);
      const judged = judgeDelivery(input, item);
      const code = await nextCode(tx);
      const flags = flagTimes({ takenAt: Date.parse(input.takenAt), recordedAt: at.getTime() });
      const row = rowOfDelivery({ input, judged, code }, flags, by, at);
      await tx.receiptRow.create({ data: { ...row, id: input.receiptId } });
      if (judged.isMiss) await openMiss(tx, input, judged, by, at);
      return {};
    });
    return this.db.transaction(by, (tx) => showReceipt(tx, input.receiptId));
  }
}

export async function knownItem(tx: Tx, { itemId, supplierId }: Pick<Input, 'itemId' | 'supplierId'>): Promise<ItemNow> {
  const item = (await itemsNow(tx, [itemId])).get(itemId);
  if (!item) throw new Problem('not-found', told('no-such-item'));
  if (!(await suppliersNow(tx, [supplierId])).has(supplierId)) throw new Problem('not-found', told('no-such-supplier'));
  return item;
}

/** R-0001, R-0002, … Writes run one after the other, so the number is free. */
const nextCode = async (tx: Tx): Promise<string> =>
  `R-${String((await tx.receiptRow.count({ where: { amendsId: null } })) + 1).padStart(4, '0')}`;

type Delivery = { input: Omit<Input, 'receiptId'>; judged: JudgedDelivery; code: string };

export function rowOfDelivery({ input, judged, code }: Delivery, timeFlags: string[], by: Person, at: Date) {
  const { weight, temperature, takenAt, killDate, packDate, itemId, supplierId, supplierLot } = input;
  const { supplierEstablishmentNumber, decision, reason, fractionPercent } = input;
  return {
    ...keptBy(by, at),
    ...keepWeight(weight),
    ...{ itemId, supplierId, supplierLot, supplierEstablishmentNumber, decision, reason, fractionPercent },
    code,
    killDate: killDate && new Date(killDate),
    packDate: packDate && new Date(packDate),
    temperatureValue: temperature?.value,
    temperatureUnit: temperature?.unit,
    limit: judged.limit,
    verdict: judged.verdict && keepVerdict(judged.verdict),
    flags: judged.isUnusual ? [...timeFlags, 'unusual-value'] : timeFlags,
    station: by.station,
    takenAt: new Date(takenAt),
  };
}

const openMiss = (tx: Tx, input: Input, judged: JudgedDelivery, by: Person, at: Date): Promise<string> =>
  openDeviation(
    tx,
    {
      dedupeKey: missOf(input.receiptId),
      receiptId: input.receiptId,
      subjectId: input.receiptId,
      limit: judged.limit,
      verdict: judged.verdict,
      takenAt: input.takenAt,
    },
    by,
    at,
  );
