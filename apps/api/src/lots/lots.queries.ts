import type { InputOf, listLots as contract, LotHead, ReplyOf } from '@larderbook/contracts';
import { reopened } from '../deviations/reopened.queries';
import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { readLots } from './lot-rows';
import { headOf } from './show-lot';
import { whereItStands } from './where-a-lot-stands';

type Asked = InputOf<typeof contract>;
const page = 50;

/** One page, newest first. */
export async function listLots(tx: Tx, { standing, before }: Asked, now: Date): Promise<ReplyOf<typeof contract>> {
  const found: LotHead[] = [];
  let from = before ? new Date(before) : undefined;
  for (;;) {
    const started = await startedBefore(tx, standing, from);
    const heads = await headsOf(
      tx,
      started.map(({ id }) => id),
      now,
    );
    found.push(...heads.filter((head) => standing === 'all' || head.standing === standing));
    from = started.at(-1)?.takenAt;
    if (started.length < page || found.length >= page) return { lots: found, more: started.length >= page };
  }
}

/** Newest first. */
export async function headsOf(tx: Tx, lotIds: readonly string[], now: Date): Promise<LotHead[]> {
  const lots = await readLots(tx, lotIds);
  const heads = lots.map((rows) => headOf(rows, whereItStands(rows, now)));
  return heads.sort((a, b) => b.startedAt.localeCompare(a.startedAt) || b.code.localeCompare(a.code));
}

/** Leaves out lots that have left, with nothing open and no review taken back. Newest first. */
export async function lotsStillHere(tx: Tx): Promise<string[]> {
  const undecidedAgain = await reopened(tx);
  const lots = await tx.$queryRaw<{ id: string }[]>`
    SELECT l.id FROM lot l WHERE ${isHere}
      OR l.id IN (SELECT d.lot_id FROM deviation d WHERE d.id = ANY(${undecidedAgain}::uuid[]))
    ORDER BY l.taken_at DESC`;
  return lots.map(({ id }) => id);
}

const hasLeft = Prisma.sql`(
  EXISTS (SELECT FROM packing_now p WHERE p.lot_id = l.id)
  AND NOT EXISTS (SELECT FROM packing_now p WHERE p.lot_id = l.id
    AND p.count > coalesce((SELECT sum(s.count) FROM shipment_line_now s WHERE s.packing_id = p.id), 0)))`;
const isHere = Prisma.sql`(
  NOT ${hasLeft} OR EXISTS (SELECT FROM deviation d WHERE d.lot_id = l.id
    AND NOT EXISTS (SELECT FROM deviation_closing_now c WHERE c.deviation_id = d.id))
  OR EXISTS (SELECT FROM review v JOIN review_taken_back t ON t.review_id = v.id WHERE v.lot_id = l.id))`;

/** Finished lots need not be judged one by one. */
const atLeast: Record<Asked['standing'], Prisma.Sql> = {
  'in-work': isHere,
  'to-review': isHere,
  cleared: isHere,
  shipped: hasLeft,
  'on-hold': Prisma.sql`true`,
  condemned: isHere,
  ended: Prisma.sql`true`,
  all: Prisma.sql`true`,
};

/** Lots that started at the same moment stay on one page. */
function startedBefore(tx: Tx, standing: Asked['standing'], from: Date | undefined): Promise<{ id: string; takenAt: Date }[]> {
  const earlier = from ? Prisma.sql`l.taken_at < ${from}` : Prisma.sql`true`;
  return tx.$queryRaw`
    SELECT l.id, l.taken_at AS "takenAt" FROM lot l WHERE ${earlier} AND ${atLeast[standing]}
    ORDER BY l.taken_at DESC FETCH FIRST ${page} ROWS WITH TIES`;
}
