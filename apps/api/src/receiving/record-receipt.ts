import { Injectable } from '@nestjs/common';
import type { InputOf, Receipt, recordReceipt } from '@larderbook/contracts';
import { flagTimes } from '@larderbook/haccp';
import { openDeviation } from '../deviations/open-deviation';
import { RecordOnce } from '../ledger/record-once';
import { Database, type Tx } from '../platform/database';
import { keepWeight } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { itemsNow, type ItemNow } from '../plan/items-now';
import { checkDelivery } from './check-delivery';
import { judgeDelivery, type JudgedDelivery } from './judge-delivery';
import { missOf } from './miss-of';
import { showReceipt } from './receipts.queries';
import { suppliersNow } from './suppliers-now';

type Input = InputOf<typeof recordReceipt>;

/** A delivery: measured, judged, accepted or refused. One accepted although it missed opens its deviation here. */
@Injectable()
export class RecordReceipt {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: Input, by: Person): Promise<Receipt> {
    await this.once.run(by, { id: input.receiptId, kind: 'receipt', request: input }, async (tx, at) => {
      const item = await known(tx, input);
      checkDelivery(input, item);
      const judged = judgeDelivery(input, item);
      const code = await nextCode(tx);
      await insert(tx, { input, judged, code }, by, at);
      if (judged.isMiss) await openMiss(tx, { input, judged, code, item }, by, at);
      return {};
    });
    return this.db.transaction(by, (tx) => showReceipt(tx, input.receiptId));
  }
}

async function known(tx: Tx, { itemId, supplierId }: Input): Promise<ItemNow> {
  const item = (await itemsNow(tx, [itemId])).get(itemId);
  if (!item) throw new Problem('not-found', { detail: 'There is no such item in this shop.' });
  if (!(await suppliersNow(tx, [supplierId])).has(supplierId))
    throw new Problem('not-found', { detail: 'There is no such supplier in this shop.' });
  return item;
}

/** R-0001, R-0002, … Writes of an establishment follow one another, so the number is free. */
const nextCode = async (tx: Tx): Promise<string> => `R-${String((await tx.receiptRow.count({ where: { amendsId: null } })) + 1).padStart(4, '0')}`;

type Delivery = { input: Input; judged: JudgedDelivery; code: string };

async function insert(tx: Tx, { input, judged, code }: Delivery, by: Person, at: Date): Promise<void> {
  const { receiptId, weight, temperature, takenAt, killDate, packDate, sure: _sure, ...fields } = input;
  const timeFlags = flagTimes({ takenAt: Date.parse(takenAt), recordedAt: at.getTime() });
  await tx.receiptRow.create({
    data: {
      ...fields,
      ...keepWeight(weight),
      establishmentId: by.establishmentId,
      id: receiptId,
      code,
      killDate: killDate && new Date(killDate),
      packDate: packDate && new Date(packDate),
      temperatureValue: temperature?.value,
      temperatureUnit: temperature?.unit,
      limit: judged.limit,
      verdict: judged.verdict,
      flags: judged.isUnusual ? [...timeFlags, 'unusual-value'] : timeFlags,
      station: by.station,
      takenAt: new Date(takenAt),
      recordedAt: at,
      recordedBy: by.personId,
    },
  });
}

const openMiss = (
  tx: Tx,
  { input, judged, code, item }: Delivery & { item: ItemNow },
  by: Person,
  at: Date,
): Promise<string> =>
  openDeviation(
    tx,
    {
      cause: missOf(input.receiptId),
      receiptId: input.receiptId,
      subjectId: input.receiptId,
      description: `Delivery ${code} of ${item.name} was accepted. ${judged.verdict?.because ?? ''}`.trim(),
      limit: judged.limit,
      verdict: judged.verdict,
      takenAt: input.takenAt,
    },
    by,
    at,
  );
