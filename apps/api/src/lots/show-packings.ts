import { knownFlags, type Lot } from '@larderbook/contracts';
import { madeBy } from '../shop/person-names';
import { keptWeightOf } from '../platform/kept-weight';
import type { LotRows } from './lot-rows';
import type { Shown } from './read-shown';

/** Oldest first. */
export const showPackings = ({ packings, people }: Shown, { id: lotId, code, product }: LotRows): Lot['packings'] =>
  packings.map((row) => ({
    packingId: row.id,
    rowId: row.rowId,
    code: row.code,
    lotId,
    lotCode: code,
    productName: product.name,
    count: row.count,
    left: row.count - row.shipmentLines.reduce((sum, { count }) => sum + count, 0),
    net: keptWeightOf({ weightValue: row.netValue, weightUnit: row.netUnit, grams: row.netGrams }),
    useBy: row.useBy.toISOString().slice(0, 10),
    flags: knownFlags(row.flags),
    made: madeBy(row, people),
  }));

/** In the order of the shipments. */
export function showShipments({ packings, names }: Shown): Lot['shipments'] {
  const lines = packings.flatMap(({ code, shipmentLines }) => shipmentLines.map((line) => ({ ...line, packingCode: code })));
  return lines
    .sort((a, b) => a.shipment.number - b.shipment.number)
    .map(({ shipment: { id, number, customerId, takenAt, recordedAt }, packingCode, count }) => ({
      shipmentId: id,
      number,
      customer: names.get(customerId) ?? '',
      packingCode,
      count,
      at: takenAt.toISOString(),
      recordedAt: recordedAt.toISOString(),
    }));
}
