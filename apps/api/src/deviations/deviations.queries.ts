import type { ControlPoint, Deviation } from '@larderbook/contracts';
import type { CriticalLimit, Verdict } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';
import { madeBy, personNames, type PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { sayKeptWeight } from '../platform/kept-weight';
import { Problem } from '../platform/problem';
import { deviationsBehind } from './deviations-behind';
import { shippedAlready } from './shipped-already';

const everyPart = {
  actions: { orderBy: { recordedAt: 'asc' } },
  dispositions: true,
  closings: true,
} satisfies Prisma.DeviationInclude;
type Row = Prisma.DeviationGetPayload<{ include: typeof everyPart }>;

type Which = { open: 'only' | 'all'; lotId?: string };

/** Open ones first, then the newest. With a lot: all that stand on it, its deliveries' and its reworked lots' too. */
export async function listDeviations(tx: Tx, { open, lotId }: Which): Promise<Deviation[]> {
  const onLot = lotId && (await deviationsBehind(tx, [lotId])).map(({ deviationId }) => deviationId);
  const rows = await tx.deviation.findMany({
    where: { ...(onLot && { id: { in: onLot } }), ...(open === 'only' && { closings: { none: {} } }) },
    include: everyPart,
    orderBy: { number: 'desc' },
  });
  const shown = await showAll(tx, rows);
  return [...shown.filter((deviation) => deviation.open), ...shown.filter((deviation) => !deviation.open)];
}

/** Throws `not-found`. */
export async function showDeviation(tx: Tx, deviationId: string): Promise<Deviation> {
  const [shown] = await showAll(tx, await tx.deviation.findMany({ where: { id: deviationId }, include: everyPart }));
  if (!shown) throw new Problem('not-found');
  return shown;
}

async function showAll(tx: Tx, rows: Row[]): Promise<Deviation[]> {
  if (rows.length === 0) return [];
  const ids = rows.map(({ id }) => id);
  const concerned = new Map((await whatTheyConcern(tx, ids)).map((about) => [about.id, about]));
  const shipped = await shippedAlready(tx, ids);
  const names = await personNames(tx);
  return rows.map((row) => toDeviation(row, concerned.get(row.id), shipped.has(row.id), names));
}

type Concerned = {
  id: string;
  lotCode: string | null;
  productName: string | null;
  receiptCode: string | null;
  itemName: string | null;
  controlPoint: ControlPoint | null;
};

const whatTheyConcern = (tx: Tx, ids: string[]) => tx.$queryRaw<Concerned[]>`
  SELECT d.id, l.code AS "lotCode", p.name AS "productName", r.code AS "receiptCode", i.name AS "itemName",
    (SELECT point FROM plan n, jsonb_array_elements(n.content -> 'controlPoints') point
      WHERE n.id = l.plan_id AND point ->> 'controlPointId' = d.control_point_id::text) AS "controlPoint"
  FROM deviation d
  LEFT JOIN lot l ON l.id = d.lot_id
  LEFT JOIN product p ON p.id = l.product_id
  LEFT JOIN receipt_now r ON r.id = d.receipt_id
  LEFT JOIN item i ON i.id = r.item_id
  WHERE d.id = ANY(${ids}::uuid[])`;

function toDeviation(row: Row, about: Concerned | undefined, isShipped: boolean, names: PersonNames): Deviation {
  const { lotCode, productName, receiptCode, itemName, controlPoint } = about ?? {};
  return {
    deviationId: row.id,
    number: row.number,
    lot: row.lotId && lotCode && productName ? { lotId: row.lotId, code: lotCode, productName } : undefined,
    receipt:
      row.receiptId && receiptCode && itemName ? { receiptId: row.receiptId, code: receiptCode, itemName } : undefined,
    controlPoint: controlPoint ?? undefined,
    description: row.description,
    limit: (row.limit as CriticalLimit | null) ?? undefined,
    verdict: (row.verdict as Verdict | null) ?? undefined,
    open: row.closings.length === 0,
    opened: madeBy(row, names),
    shippedAlready: isShipped,
    actions: row.actions.map((action) => ({ ...action, actionId: action.id, made: madeBy(action, names) })),
    ...settled(row, names),
  };
}

function settled({ dispositions: [disposition], closings: [closing] }: Row, names: PersonNames) {
  const signed = (made: { recordedBy: string; recordedAt: Date }) => {
    const { name, at } = madeBy(made, names);
    return { by: name, at };
  };
  return {
    disposition: disposition && {
      dispositionId: disposition.id,
      decision: disposition.decision as NonNullable<Deviation['disposition']>['decision'],
      weight: sayKeptWeight(disposition),
      basis: disposition.basis,
      ...signed(disposition),
    },
    closing: closing && { closingId: closing.id, note: closing.note, ...signed(closing) },
  };
}
