import { massFromGrams } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { condemnedPackages, type PackageEvent } from './condemned-packages';

/** What of a lot is in packages and may leave, as far as its weight goes, in femtograms. */
export type Stock = { packed: bigint; shipped: bigint; condemned: bigint };
type Row = { lotId: string; kind: PackageEvent['kind']; grams: string };

/** The packages of several lots, in the order of the ledger. A lot of which nothing was packed is not in the answer. */
export async function stockOf(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, Stock>> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT h.lot_id AS "lotId", h.kind, h.grams::text AS grams FROM (
      SELECT p.id, p.lot_id, 'packed' AS kind, p.count * p.net_grams AS grams
        FROM packing_now p WHERE p.lot_id = ANY(${lotIds}::uuid[])
      UNION ALL
      SELECT l.shipment_id, p.lot_id, 'shipped', l.count * p.net_grams
        FROM packing_now p JOIN shipment_line_now l ON l.packing_id = p.id WHERE p.lot_id = ANY(${lotIds}::uuid[])
      UNION ALL
      SELECT x.id, d.lot_id, 'condemned', x.grams
        FROM deviation d JOIN disposition x ON x.deviation_id = d.id AND x.decision = 'condemn'
        WHERE d.lot_id = ANY(${lotIds}::uuid[])
    ) h JOIN acknowledgement a ON a.id = h.id ORDER BY a.seq`;

  const events = new Map<string, PackageEvent[]>();
  for (const { lotId, kind, grams } of rows) {
    const event = { kind, mass: massFromGrams(grams) };
    events.set(lotId, [...(events.get(lotId) ?? []), event]);
  }
  return new Map([...events].map(([lotId, happened]) => [lotId, stockFrom(happened)]));
}

const stockFrom = (events: PackageEvent[]): Stock => ({
  packed: sum(events, 'packed'),
  shipped: sum(events, 'shipped'),
  condemned: condemnedPackages(events),
});

const sum = (events: PackageEvent[], kind: PackageEvent['kind']): bigint =>
  events.reduce((total, event) => (event.kind === kind ? total + event.mass : total), 0n);
