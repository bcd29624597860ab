import { Injectable } from '@nestjs/common';
import type { InputOf, recordShipment } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect, type Amending } from '../ledger/row-to-correct';
import { whereLotsStand } from '../lots/where-a-lot-stands';
import { Database, type Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { checkClearedThen } from './cleared-then';
import { customersNow } from './customers.queries';
import { checkGoods } from './goods-to-ship';
import { checkStillCalledBack } from './still-called-back';
import { showShipment, type Shipment } from './shipments.queries';

type Input = InputOf<typeof recordShipment>;
type Lines = Input['lines'];
type Corrected = { amending: Amending; number: number; lines: Lines };

/** The whole load ships, or nothing of it. */
@Injectable()
export class RecordShipment {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: Input, by: Person): Promise<Shipment | undefined> {
    const { shipmentId: id, customerId, lines } = input;
    await this.once.run(by, { id, kind: 'shipment', request: input, happenedAt: input.takenAt }, async (tx, at) => {
      if (!(await customersNow(tx, [customerId])).has(customerId)) throw new Problem('not-found', told('no-such-customer'));
      const corrected = await shipmentToCorrect(tx, input);
      const stands = await whereTheyStand(tx, lines);
      await checkGoods(tx, moreThan(lines, corrected?.lines ?? []), stands);
      await checkClearedThen(tx, input, stands, corrected?.amending.firstId);
      await insert(tx, input, corrected, by, at);
      if (corrected)
        await checkStillCalledBack(
          tx,
          corrected.lines.map(({ packingId }) => packingId),
        );
      return {};
    });
    return this.db.transaction(by, (tx) => showShipment(tx, id));
  }
}

async function whereTheyStand(tx: Tx, lines: Lines) {
  const where = { id: { in: lines.map(({ packingId }) => packingId) } };
  const packings = await tx.packing.findMany({ where, select: { lotId: true } });
  return whereLotsStand(tx, [...new Set(packings.map(({ lotId }) => lotId))]);
}

async function shipmentToCorrect(tx: Tx, { amends, reason }: Input): Promise<Corrected | undefined> {
  const amending = await rowToCorrect(tx, 'shipment', { amends, reason });
  const row = amending && (await tx.shipmentRow.findFirst({ where: { id: amends }, select: { number: true } }));
  if (!row) return undefined;
  const lines = await tx.shipmentLineRow.findMany({
    where: { shipmentId: amends },
    select: { packingId: true, count: true },
  });
  return { amending, number: row.number, lines };
}

/** Only what a correction adds has to be free to leave. */
const moreThan = (lines: Lines, before: Lines): Lines =>
  lines.flatMap(({ packingId, count }) => {
    const more = count - (before.find((line) => line.packingId === packingId)?.count ?? 0);
    return more > 0 ? [{ packingId, count: more }] : [];
  });

async function insert(tx: Tx, input: Input, corrected: Corrected | undefined, by: Person, at: Date): Promise<void> {
  const { shipmentId: id, customerId, document, lines } = input;
  const { establishmentId, station, personId } = by;
  const made = { station, takenAt: new Date(input.takenAt), recordedAt: at, recordedBy: personId };
  const number = corrected?.number ?? (await nextNumber(tx));
  const { count } = await tx.shipmentRow.createMany({
    data: [{ establishmentId, id, number, customerId, document, ...made, ...corrected?.amending }],
    skipDuplicates: true,
  });
  if (count === 0) throw new Problem('sent-differently');
  await tx.shipmentLineRow.createMany({
    data: lines.map((line) => ({ ...line, establishmentId, id: v7(), shipmentId: id })),
  });
}

async function nextNumber(tx: Tx): Promise<number> {
  const { _max } = await tx.shipmentRow.aggregate({ _max: { number: true } });
  return (_max.number ?? 0) + 1;
}
