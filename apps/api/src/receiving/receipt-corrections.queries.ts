import type { Correction } from '@larderbook/contracts';
import { correctionsOf, dayOf, figureOf, momentOf, typed, type Told } from '../ledger/corrections-of';
import { namesNow } from '../ledger/rows-that-count';
import { madeBy, type PersonNames } from '../shop/person-names';
import { named } from '../platform/account';
import type { Tx } from '../platform/database';

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
  what: named('entry-delivery', { code: row.code }),
  says: [
    [named('says-item'), names.get(row.itemId)],
    [named('says-supplier'), names.get(row.supplierId)],
    [named('says-supplier-lot'), typed(row.supplierLot)],
    [named('says-establishment-number'), typed(row.supplierEstablishmentNumber)],
    [named('says-kill-date'), dayOf(row.killDate)],
    [named('says-pack-date'), dayOf(row.packDate)],
    [named('says-weight'), figureOf(row.weightValue, row.weightUnit)],
    [named('says-temperature'), figureOf(row.temperatureValue, row.temperatureUnit)],
    [named('says-content'), figureOf(row.fractionPercent, '%')],
    [named('says-decision'), named(row.decision === 'refused' ? 'says-refused' : 'says-accepted')],
    [named('says-decision-reason'), typed(row.reason)],
    [named('says-time'), momentOf(row.takenAt)],
  ],
});
