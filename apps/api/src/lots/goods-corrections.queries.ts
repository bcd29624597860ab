import type { ControlPoint, Correction } from '@larderbook/contracts';
import { correctionsOf, dayOf, figureOf, momentOf, typed, type LastingRow, type Told } from '../ledger/corrections-of';
import { namesNow } from '../ledger/rows-that-count';
import { madeBy, type PersonNames } from '../shop/person-names';
import { named } from '../platform/account';
import type { Tx } from '../platform/database';
import { receiptCorrections } from '../receiving/receipt-corrections.queries';
import { removedAs } from './removed-as';

type About = { id: string; points: readonly ControlPoint[]; receiptIds: readonly string[] };

const signed =
  (people: PersonNames) =>
  ({ recordedBy, recordedAt, station }: LastingRow) =>
    madeBy({ recordedBy, recordedAt, station }, people);

/** Oldest first. */
export async function correctionsOnLot(tx: Tx, about: About, people: PersonNames): Promise<Correction[]> {
  const where = { lotId: about.id };
  const [stageEnds, packings, removals, receipts] = await Promise.all([
    tx.stageEndRow.findMany({ where }),
    tx.packingRow.findMany({ where }),
    tx.removalRow.findMany({ where }),
    receiptCorrections(tx, [...new Set(about.receiptIds)], people),
  ]);
  const shipments = await shipmentCorrections(
    tx,
    packings.map(({ id }) => id),
    people,
  );
  const by = signed(people);
  return [
    ...receipts,
    ...correctionsOf('stage-end', stageEnds, by, ({ controlPointId, takenAt }) => {
      const name = about.points.find((point) => point.controlPointId === controlPointId)?.name ?? '';
      return { what: named('entry-stage-end', { point: name }), says: [[named('says-time'), momentOf(takenAt)]], controlPointId };
    }),
    ...correctionsOf('packing', packings, by, tellPacking),
    ...correctionsOf('removal', removals, by, (row) => ({
      what: removedAs(row.kind),
      says: [
        [named('says-kind'), removedAs(row.kind)],
        [named('says-weight'), figureOf(row.weightValue, row.weightUnit)],
        [named('says-note'), typed(row.note)],
        [named('says-time'), momentOf(row.takenAt)],
      ],
    })),
    ...shipments,
  ].sort((a, b) => a.made.recordedAt.localeCompare(b.made.recordedAt));
}

type PackingRow = LastingRow & {
  code: string;
  count: number;
  netValue: { toString(): string };
  netUnit: string;
  useBy: Date;
  takenAt: Date;
};

const tellPacking = (row: PackingRow): Told => ({
  what: named('entry-packing', { code: row.code }),
  says: [
    [named('says-packages'), String(row.count)],
    [named('says-net'), figureOf(row.netValue, row.netUnit)],
    [named('says-use-by'), dayOf(row.useBy)],
    [named('says-time'), momentOf(row.takenAt)],
  ],
});

async function shipmentCorrections(tx: Tx, packingIds: readonly string[], people: PersonNames): Promise<Correction[]> {
  if (packingIds.length === 0) return [];
  const named = await tx.shipmentLineRow.findMany({
    where: { packingId: { in: [...packingIds] } },
    select: { shipmentId: true },
  });
  const rows = await shipmentChains(
    tx,
    named.map(({ shipmentId }) => shipmentId),
  );
  return correctionsOfShipments(tx, rows, people);
}

/** The ids are those the shipments began with. */
export const correctionsOfThese = async (tx: Tx, shipmentIds: readonly string[], people: PersonNames) =>
  correctionsOfShipments(tx, await shipmentChains(tx, shipmentIds), people);

type ShipmentRow = Awaited<ReturnType<typeof shipmentChains>>[number];

/** Skips shipments that were never corrected. */
async function shipmentChains(tx: Tx, rowIds: readonly string[]) {
  const ids = [...new Set(rowIds)];
  const corrected = await tx.shipmentRow.findMany({
    where: { amendsId: { not: null }, OR: [{ id: { in: ids } }, { firstId: { in: ids } }] },
  });
  const firstIds = [...new Set(corrected.flatMap(({ firstId }) => firstId ?? []))];
  if (firstIds.length === 0) return [];
  return tx.shipmentRow.findMany({ where: { OR: [{ id: { in: firstIds } }, { firstId: { in: firstIds } }] } });
}

async function correctionsOfShipments(tx: Tx, rows: ShipmentRow[], people: PersonNames): Promise<Correction[]> {
  if (rows.length === 0) return [];
  const customers = await namesNow(tx, { customer: rows.map(({ customerId }) => customerId) });
  const lines = await tx.shipmentLineRow.findMany({ where: { shipmentId: { in: rows.map(({ id }) => id) } } });
  const packings = await tx.packingRow.findMany({
    where: { id: { in: lines.map(({ packingId }) => packingId) } },
    select: { id: true, code: true },
  });
  const codes = new Map(packings.map(({ id, code }) => [id, code]));
  return correctionsOf('shipment', rows, signed(people), (row) => ({
    what: named('entry-shipment', { number: String(row.number) }),
    says: [
      [named('says-customer'), customers.get(row.customerId)],
      [named('says-document'), typed(row.document)],
      ...lines
        .filter(({ shipmentId }) => shipmentId === row.id)
        .map(({ packingId, count }) => [named('says-packages-of', { code: codes.get(packingId) ?? '' }), String(count)] as const),
      [named('says-time'), momentOf(row.takenAt)],
    ],
  }));
}
