import type { Account } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { Prisma } from '../generated/prisma/client';
import { asWorded, sentence } from '../platform/account';

/** What a deviation was opened with: the words of a person, or what was judged, where, and of which delivery. */
export type OpenedWith = {
  description: string | null;
  verdict: Verdict | null;
  point: string | null;
  delivery: { code: string; item: string; isCorrected: boolean } | null;
};

/** A column of a statement that calls its deviation `d` or `e`. */
export const openedWithOf = (deviation: 'd' | 'e'): Prisma.Sql => {
  const d = Prisma.raw(deviation);
  return Prisma.sql`jsonb_build_object('description', ${d}.description, 'verdict', ${d}.verdict - 'rulesVersion',
    'point', (SELECT point ->> 'name' FROM lot o JOIN plan n ON n.id = o.plan_id, jsonb_array_elements(n.content -> 'controlPoints') point
      WHERE o.id = ${d}.lot_id AND point ->> 'controlPointId' = ${d}.control_point_id::text),
    'delivery', (SELECT jsonb_build_object('code', f.code, 'item', i.name, 'isCorrected', ${d}.subject_id IS DISTINCT FROM f.id)
      FROM receipt f LEFT JOIN receipt_now w ON w.id = f.id JOIN item i ON i.id = coalesce(w.item_id, f.item_id)
      WHERE f.id = ${d}.receipt_id))`;
};

/** What somebody typed stands as it was typed. */
export function aboutDeviation({ description, verdict, point, delivery }: OpenedWith): Account {
  if (description !== null) return asWorded(description);
  const judged: Account = verdict ? [{ verdict, tells: 'because', point: point ?? undefined }] : [];
  if (!delivery) return judged;
  const { code, item, isCorrected } = delivery;
  return [isCorrected ? sentence('delivery-corrected', { code }) : sentence('delivery-accepted', { code, item }), ...judged];
}
