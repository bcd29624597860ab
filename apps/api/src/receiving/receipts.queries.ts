import { knownFlags, receipt, type InputOf, type listReceipts, type Receipt } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { madeBy, personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { verdictAsKept } from '../platform/kept-verdict';
import { gramsOf, keptWeightOf } from '../platform/kept-weight';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { itemsNow } from '../products/items-now';
import { missOf } from './miss-of';
import { receiptCorrections } from './receipt-corrections.queries';
import { leftColumn, leftOf } from './receipt-left';
import { suppliersNow } from './suppliers-now';

const page = 50;

/** Keyed by the first id; a voided delivery stays in the list. */
const lastRows = Prisma.sql`(
  SELECT x.establishment_id, coalesce(x.first_id, x.id) AS id, x.item_id, x.taken_at, x.decision, x.grams, x.voided FROM receipt x
  WHERE NOT EXISTS (SELECT FROM receipt later WHERE later.establishment_id = x.establishment_id AND later.amends_id = x.id))`;

/** Newest first. Deliveries of the same moment stay on one page. */
export async function listReceiptPage(tx: Tx, { itemId, left, before }: InputOf<typeof listReceipts>) {
  const ofItem = itemId ? Prisma.sql`AND r.item_id = ${itemId}::uuid` : Prisma.empty;
  const earlier = before ? Prisma.sql`AND r.taken_at < ${new Date(before)}` : Prisma.empty;
  const notEmpty = left === 'some' ? Prisma.sql`AND r.voided IS NOT TRUE AND ${leftColumn} > 0` : Prisma.empty;
  const wanted = Prisma.sql`FROM ${lastRows} r WHERE true ${ofItem} ${earlier} ${notEmpty}`;
  const chosen = await tx.$queryRaw<{ id: string; more: boolean }[]>`
    WITH shown AS (SELECT r.id, r.taken_at ${wanted} ORDER BY r.taken_at DESC FETCH FIRST ${page} ROWS WITH TIES)
    SELECT id, EXISTS (SELECT ${wanted} AND r.taken_at < (SELECT min(taken_at) FROM shown)) AS more FROM shown`;
  const ids = chosen.map(({ id }) => id);
  return { receipts: await receiptsById(tx, ids), more: chosen[0]?.more ?? false };
}

/** Throws `not-found`. */
export async function showReceipt(tx: Tx, receiptId: string): Promise<Receipt> {
  const [found] = await receiptsById(tx, [receiptId]);
  if (!found) throw new Problem('not-found', told('no-such-delivery'));
  return found;
}

async function receiptsById(tx: Tx, ids: string[]): Promise<Receipt[]> {
  const rows: Row[] = [...(await tx.receipt.findMany({ where: { id: { in: ids } } })), ...(await voided(tx, ids))].sort(newestFirst);
  const itemIds = rows.map(({ itemId }) => itemId);
  const supplierIds = rows.map(({ supplierId }) => supplierId);
  const items = await itemsNow(tx, itemIds);
  const suppliers = await suppliersNow(tx, supplierIds);
  const left = await leftOf(tx, ids);
  const deviationOf = await deviationsOf(tx, ids);
  const names = await personNames(tx);
  const corrections = await receiptCorrections(tx, ids, names);
  const firsts = await firstRows(tx, ids);

  return rows.map((row) =>
    receipt.parse({
      receiptId: row.id,
      rowId: row.rowId,
      corrections: corrections.filter(({ id }) => id === row.id),
      voided: row.voided === true,
      code: row.code,
      item: items.get(row.itemId),
      supplier: suppliers.get(row.supplierId),
      supplierLot: row.supplierLot,
      supplierEstablishmentNumber: row.supplierEstablishmentNumber ?? undefined,
      killDate: dayOf(row.killDate),
      packDate: dayOf(row.packDate),
      weight: keptWeightOf(row),
      temperature: row.temperatureValue ? { value: row.temperatureValue.toNumber(), unit: row.temperatureUnit } : undefined,
      limit: row.limit ?? undefined,
      verdict: row.verdict ? verdictAsKept(row.verdict) : undefined,
      decision: row.decision,
      reason: row.reason,
      fractionPercent: row.fractionPercent?.toNumber(),
      leftGrams: Math.max(0, gramsOf(left.get(row.id) ?? 0n)),
      deviationId: deviationOf.get(row.id),
      flags: knownFlags(row.flags),
      made: madeBy({ ...row, ...firsts.get(row.id) }, names),
    }),
  );
}

type Row = Awaited<ReturnType<Tx['receipt']['findMany']>>[number] & { voided?: boolean | null };

const newestFirst = (a: Row, b: Row): number => b.takenAt.getTime() - a.takenAt.getTime() || b.code.localeCompare(a.code);

async function voided(tx: Tx, ids: readonly string[]): Promise<Row[]> {
  const rows = await tx.receiptRow.findMany({ where: { voided: true, firstId: { in: [...ids] } } });
  return rows.map((row) => ({ ...row, rowId: row.id, id: row.firstId ?? row.id }));
}

/** A correction has a recorder and time of its own. */
async function firstRows(tx: Tx, ids: string[]) {
  const select = { id: true, recordedBy: true, recordedAt: true, station: true };
  const rows = await tx.receiptRow.findMany({ where: { id: { in: ids } }, select });
  return new Map(rows.map(({ id, ...made }) => [id, made]));
}

async function deviationsOf(tx: Tx, receiptIds: string[]): Promise<Map<string | null, string>> {
  const where = { dedupeKey: { in: receiptIds.map(missOf) } };
  const deviations = await tx.deviation.findMany({ where, select: { id: true, receiptId: true } });
  return new Map(deviations.map(({ id, receiptId }) => [receiptId, id]));
}

const dayOf = (date: Date | null): string | undefined => date?.toISOString().slice(0, 10);
