import { knownFlags, type Lot } from '@larderbook/contracts';
import { rowsThatCount } from '../ledger/rows-that-count';
import { madeBy, type PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { sayKeptWeight } from '../platform/kept-weight';
import type { LotRows } from './lot-rows';

/** Runs of packages of a lot, oldest first, with what left of each and to whom. */
export async function showPackings(tx: Tx, { id: lotId, code: lotCode, product }: LotRows, names: PersonNames) {
  const rows = await tx.packing.findMany({
    where: { lotId },
    include: {
      shipmentLines: {
        select: { count: true, shipment: { select: { id: true, number: true, takenAt: true, customerId: true } } },
      },
    },
    orderBy: [{ takenAt: 'asc' }, { code: 'asc' }],
  });
  const lines = rows.flatMap(({ code, shipmentLines }) =>
    shipmentLines.map((line) => ({ ...line, packingCode: code })),
  );
  const customers = await customerNames(
    tx,
    lines.map(({ shipment }) => shipment.customerId),
  );
  const shown = rows.map((row): Lot['packings'][number] => ({
    packingId: row.id,
    code: row.code,
    lotId,
    lotCode,
    productName: product.name,
    count: row.count,
    left: row.count - row.shipmentLines.reduce((sum, { count }) => sum + count, 0),
    net: sayKeptWeight({ weightValue: row.netValue, weightUnit: row.netUnit, grams: row.netGrams }),
    useBy: row.useBy.toISOString().slice(0, 10),
    flags: knownFlags(row.flags),
    made: madeBy(row, names),
  }));
  return { shown, lines, customers };
}

export const showShipments = ({ lines, customers }: Awaited<ReturnType<typeof showPackings>>): Lot['shipments'] =>
  [...lines]
    .sort((a, b) => a.shipment.number - b.shipment.number)
    .map(({ shipment: { id, number, customerId, takenAt }, packingCode, count }) => ({
      shipmentId: id,
      number,
      customer: customers.get(customerId) ?? '',
      packingCode,
      count,
      at: takenAt.toISOString(),
    }));

async function customerNames(tx: Tx, customerIds: string[]): Promise<Map<string, string>> {
  const counting = await rowsThatCount(tx, 'customer', [...new Set(customerIds)]);
  const rows = await tx.customer.findMany({
    where: { id: { in: [...counting.values()] } },
    select: { id: true, name: true },
  });
  const byRow = new Map(rows.map(({ id, name }) => [id, name]));
  return new Map([...counting].map(([customerId, rowId]) => [customerId, byRow.get(rowId) ?? '']));
}
