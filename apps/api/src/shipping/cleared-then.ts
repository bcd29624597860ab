import type { InputOf, recordShipment } from '@larderbook/contracts';
import type { LotStands } from '../lots/where-a-lot-stands';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

type Input = InputOf<typeof recordShipment>;

/**
 * A load cannot leave before its review was signed. Shipping is a decision, not a measurement, so the time is asked for
 * again: throws `not-cleared-then`. A corrected shipment is held to the review it left under.
 */
export async function checkClearedThen(
  tx: Tx,
  { lines, takenAt }: Input,
  stands: ReadonlyMap<string, LotStands>,
  firstId?: string,
): Promise<void> {
  const ids = lines.map(({ packingId }) => packingId);
  const left = new Date(takenAt);
  const late = (await signedFor(tx, ids, stands, firstId)).filter(({ at }) => left < at);
  if (late.length === 0) return;
  const signed = late.map(({ code, at }) => told('review-was-signed', { code, at: { at: at.getTime() } }));
  const details = [told('said-to-have-left', { at: { at: left.getTime() } }), ...signed];
  const errors = signed.map((each) => ({ pointer: '#/takenAt', ...each }));
  throw new Problem('not-cleared-then', details, errors);
}

/** Of each lot, the latest moment at which its packages became free to leave. */
async function signedFor(tx: Tx, ids: string[], stands: ReadonlyMap<string, LotStands>, firstId?: string) {
  const packings = await tx.$queryRaw<{ id: string; lotId: string; code: string; shippedSeq: bigint | null }[]>`
    SELECT p.id, l.id AS "lotId", l.code, (SELECT seq FROM shipment WHERE id = ${firstId ?? null}::uuid) AS "shippedSeq"
    FROM packing_now p JOIN lot l ON l.id = p.lot_id WHERE p.id = ANY(${ids}::uuid[]) ORDER BY p.code`;
  const signed = new Map<string, Date>();
  for (const { id, lotId, code, shippedSeq } of packings) {
    const since = stands.get(lotId)?.clearedSince;
    const at = since?.(id, shippedSeq ?? undefined) ?? since?.(id);
    const known = signed.get(code);
    if (at && (!known || at > known)) signed.set(code, at);
  }
  return [...signed].map(([code, at]) => ({ code, at }));
}
