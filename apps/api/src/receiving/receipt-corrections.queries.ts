import type { Correction } from '@larderbook/contracts';
import { correctionsOf, type Told } from '../ledger/corrections-of';
import { namesNow } from '../ledger/rows-that-count';
import { madeBy, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { formatEnteredWeight } from '../platform/kept-weight';

type Row = Awaited<ReturnType<typeof rowsOf>>[number];

/** Oldest first. */
export async function receiptCorrections(tx: Tx, receiptIds: readonly string[], people: PersonNames): Promise<Correction[]> {
  const rows = await rowsOf(tx, receiptIds);
  if (rows.length === 0) return [];
  const names = await namesNow(tx, {
    item: rows.map(({ itemId }) => itemId),
    supplier: rows.map(({ supplierId }) => supplierId),
  });
  return correctionsOf(
    'receipt',
    rows,
    ({ recordedBy, recordedAt, station }) => madeBy({ recordedBy, recordedAt, station }, people),
    (row) => tell(row, names),
  );
}

/** Skips deliveries that were never corrected. */
async function rowsOf(tx: Tx, receiptIds: readonly string[]) {
  const ids = [...receiptIds];
  const corrected = await tx.receiptRow.findMany({ where: { firstId: { in: ids } } });
  if (corrected.length === 0) return [];
  const firsts = await tx.receiptRow.findMany({ where: { id: { in: corrected.flatMap(({ firstId }) => firstId ?? []) } } });
  return [...firsts, ...corrected];
}

const tell = (row: Row, names: ReadonlyMap<string, string>): Told => ({
  what: `Delivery ${row.code}`,
  says: {
    Item: names.get(row.itemId) ?? '',
    Supplier: names.get(row.supplierId) ?? '',
    'Supplier’s lot': row.supplierLot,
    'Supplier’s establishment number': row.supplierEstablishmentNumber ?? '',
    'Kill date': row.killDate?.toISOString().slice(0, 10) ?? '',
    'Pack date': row.packDate?.toISOString().slice(0, 10) ?? '',
    Weight: formatEnteredWeight(row),
    Temperature: row.temperatureValue ? `${row.temperatureValue.toString()} ${row.temperatureUnit ?? ''}` : '',
    Content: row.fractionPercent ? `${row.fractionPercent.toString()} %` : '',
    Decision: row.decision,
    'Reason of the decision': row.reason,
    Time: row.takenAt,
  },
});
