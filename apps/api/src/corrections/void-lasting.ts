import type { Correction, InputOf, voidRecord } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { rowToCorrect, type Amending, type Lasting } from '../ledger/row-to-correct';
import { openForMisses } from '../lots/open-for-misses';
import { judgeFollowers } from '../monitoring/judge-followers';
import { shippedOf } from '../shipping/packings.queries';
import { checkStillCalledBack } from '../shipping/still-called-back';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { receiptLeft } from '../receiving/receipt-left';
import { femtograms } from '../platform/kept-weight';

type Input = InputOf<typeof voidRecord>;
type What = Correction['about'];
type Voiding = { tx: Tx; input: Input; amending: Amending; by: Person; at: Date };

/** The voiding row copies these columns, so that what stood there still stands there. */
const tables = {
  receipt: [
    'receipt',
    'code, item_id, supplier_id, supplier_lot, supplier_establishment_number, kill_date, pack_date, weight_value, weight_unit, grams, temperature_value, temperature_unit, "limit", verdict, decision, reason, fraction_percent, flags',
  ],
  'stage-end': ['stage_end', 'lot_id, control_point_id, judged'],
  packing: ['packing', 'lot_id, code, count, net_value, net_unit, net_grams, use_by, flags'],
  shipment: ['shipment', 'number, customer_id, document'],
  removal: ['removal', 'lot_id, receipt_id, kind, weight_value, weight_unit, grams, note'],
  calibration: ['calibration', 'instrument_id, method, expected, observed, unit, verdict, action'],
} as const satisfies Record<What, readonly [Lasting, string]>;

/** Returns the deviation that this opened, if any. */
export async function voidLasting(tx: Tx, input: Input, what: What, by: Person, at: Date): Promise<string | undefined> {
  const [table, columns] = tables[what];
  const amending = await rowToCorrect(tx, table, input);
  if (!amending) throw new Problem('not-found');
  const voiding = { tx, input, amending, by, at };
  if (what === 'receipt') await checkNothingTaken(voiding);
  if (what === 'packing') await checkNothingShipped(voiding);
  const [name, copied] = [Prisma.raw(`"${table}"`), Prisma.raw(columns)];
  await tx.$executeRaw`
    INSERT INTO ${name} (establishment_id, id, ${copied}, taken_at, station, recorded_at, recorded_by, amends_id, first_id,
      amend_reason, voided)
    SELECT establishment_id, ${input.voidId}::uuid, ${copied}, taken_at, ${by.station}, ${at}, ${by.personId}::uuid, id,
      ${amending.firstId}::uuid, ${amending.amendReason}, true
    FROM ${name} WHERE id = ${input.amends}::uuid`;
  if (what === 'shipment') await checkStillCalledBack(tx, await packagesOf(voiding));
  return what === 'stage-end' ? judgeWithoutEnd(voiding) : undefined;
}

async function checkNothingTaken({ tx, amending }: Voiding): Promise<void> {
  const { row, leftFemto } = await receiptLeft(tx, amending.firstId);
  if (row.decision === 'refused' || leftFemto >= femtograms(row.grams)) return;
  throw new Problem('still-in-use', told('something-was-taken', { code: row.code }));
}

async function checkNothingShipped({ tx, amending }: Voiding): Promise<void> {
  const shipped = await shippedOf(tx, amending.firstId);
  if (shipped === 0) return;
  const packing = await tx.packingRow.findFirst({ where: { id: amending.firstId }, select: { code: true } });
  throw new Problem('still-in-use', told('packages-were-shipped', { count: shipped, code: packing?.code ?? '' }));
}

async function packagesOf({ tx, input }: Voiding): Promise<string[]> {
  const lines = await tx.shipmentLineRow.findMany({ where: { shipmentId: input.amends }, select: { packingId: true } });
  return lines.map(({ packingId }) => packingId);
}

/** The stage goes on; the stage that follows has lost its start. */
async function judgeWithoutEnd({ tx, input, amending, by, at }: Voiding): Promise<string | undefined> {
  const row = await tx.stageEndRow.findFirst({ where: { id: amending.firstId } });
  if (!row) return undefined;
  const judgedAt = await judgeFollowers(tx, row.lotId, row.controlPointId, at);
  const entry = { lotId: row.lotId, subjectId: input.voidId, takenAt: row.takenAt };
  return openForMisses(tx, entry, judgedAt, by, at);
}
