import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

/** Each correction names the row it amends and the first row, whose id lasts. */
export type Lasting =
  | 'receipt'
  | 'stage_end'
  | 'packing'
  | 'shipment'
  | 'removal'
  | 'calibration'
  | 'corrective_action'
  | 'disposition'
  | 'destruction';

export type Amending = { amendsId: string; firstId: string; amendReason: string };

/** Throws `reason-missing`, `not-found`, or `already-amended` when corrected or voided since it was seen. */
export async function rowToCorrect(
  tx: Tx,
  table: Lasting,
  { amends, reason }: { amends?: string; reason?: string },
): Promise<Amending | undefined> {
  if (!amends) return undefined;
  if (!reason) throw new Problem('reason-missing', told('say-why-corrected'));
  const name = Prisma.raw(`"${table}"`);
  const [row] = await tx.$queryRaw<{ first: string; isLast: boolean; voided: boolean }[]>`
    SELECT coalesce(r.first_id, r.id) AS first, r.voided IS TRUE AS voided,
      NOT EXISTS (SELECT FROM ${name} later WHERE later.amends_id = r.id) AS "isLast"
    FROM ${name} r WHERE r.id = ${amends}::uuid`;
  if (!row) throw new Problem('not-found', told('no-record-to-correct'));
  if (row.voided) throw new Problem('already-amended', told('was-voided'));
  if (!row.isLast) throw new Problem('already-amended');
  return { amendsId: amends, firstId: row.first, amendReason: reason };
}
