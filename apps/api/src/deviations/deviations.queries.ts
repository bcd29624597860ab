import { substances, type ControlPoint, type Deviation } from '@larderbook/contracts';
import type { CriticalLimit } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';
import { madeBy, personNames, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { deviationsBehind } from './deviations-behind';
import { dispositionsFor } from './dispositions.queries';
import { formOfAction } from './form-of-action';
import { productsHeld, type Concerned } from './held-products.queries';
import { openOnSame } from './open-on-same.queries';
import { earlierOnes } from './recurrence.queries';
import { reopened } from './reopened.queries';
import { showProducts, showWeight } from './show-products';
import { shippedAlready } from './shipped-already';
import { aboutDeviation, openedWithOf, type OpenedWith } from './what-it-is-about';
import { showActions } from './show-actions';
import { showClosings } from './show-closings';

const everyPart = {
  actions: { orderBy: { seq: 'asc' } },
  closings: { include: { takenBack: true }, orderBy: { seq: 'asc' } },
} satisfies Prisma.DeviationInclude;
type Row = Prisma.DeviationGetPayload<{ include: typeof everyPart }>;

type Which = { open: 'only' | 'all'; lotId?: string };

/** Open ones first, then the newest. A lot includes its deliveries and reworked lots. */
export async function listDeviations(tx: Tx, { open, lotId }: Which): Promise<Deviation[]> {
  const onLot = lotId && (await deviationsBehind(tx, [lotId])).map(({ deviationId }) => deviationId);
  const isOpen = async () => ({ OR: [{ closings: { none: { takenBack: null } } }, { id: { in: await reopened(tx) } }] });
  const rows = await tx.deviation.findMany({
    where: { ...(onLot && { id: { in: onLot } }), ...(open === 'only' && (await isOpen())) },
    include: everyPart,
    orderBy: { number: 'desc' },
  });
  const shown = await showAll(tx, rows);
  const [still, closed] = [shown.filter((one) => one.open), shown.filter((one) => !one.open)];
  return open === 'only' ? still : [...still, ...closed];
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
  const [about, shipped, names, held, earlier] = await Promise.all([
    whatTheyAre(tx, ids),
    shippedAlready(tx, ids),
    personNames(tx),
    productsHeld(tx, ids),
    earlierOnes(tx, ids),
  ]);
  const products = [...held.values()].flatMap((each) => each.products.map(({ id }) => id));
  const [decided, alsoOpen] = [await dispositionsFor(tx, { deviationIds: ids }, names), await openOnSame(tx, products)];
  return rows.flatMap((row) => {
    const concerned = held.get(row.id);
    if (!concerned) return [];
    const isOfRow = about.find(({ id }) => id === row.id);
    return [
      {
        ...toDeviation(row, isOfRow, concerned, names),
        shippedAlready: shipped.has(row.id) || (isReopened(row, concerned) && concerned.products.some(({ left }) => left > 0n)),
        recurrence: earlier
          .filter(({ of }) => of === row.id)
          .map(({ of: _, openedAt, openedWith, ...one }) => ({
            ...one,
            openedAt: openedAt.toISOString(),
            description: aboutDeviation(openedWith),
          })),
        products: showProducts(concerned, row.id, alsoOpen),
        dispositions: decided.filter(({ speaksFor }) => speaksFor.some(({ deviationId }) => deviationId === row.id)),
      },
    ];
  });
}

/** Product may have left while it was closed. */
const isReopened = (row: Row, { isCovered }: Concerned): boolean => row.closings.length > 0 && !(isCovered && closingOf(row));

const closingOf = ({ closings }: Row) => closings.find(({ takenBack }) => !takenBack);

type About = {
  id: string;
  lotCode: string | null;
  productName: string | null;
  controlPoint: ControlPoint | null;
  openedWith: OpenedWith;
};

const whatTheyAre = (tx: Tx, ids: string[]) => tx.$queryRaw<About[]>`
  SELECT d.id, l.code AS "lotCode", p.name AS "productName",
    ${openedWithOf('d')} AS "openedWith",
    (SELECT point FROM plan n, jsonb_array_elements(n.content -> 'controlPoints') point
      WHERE n.id = l.plan_id AND point ->> 'controlPointId' = d.control_point_id::text) AS "controlPoint"
  FROM deviation d
  LEFT JOIN lot l ON l.id = d.lot_id
  LEFT JOIN product p ON p.id = l.product_id
  WHERE d.id = ANY(${ids}::uuid[])`;

type Settled = 'shippedAlready' | 'recurrence' | 'products' | 'dispositions';

function toDeviation(row: Row, about: About | undefined, held: Concerned, names: PersonNames): Omit<Deviation, Settled> {
  const { lotCode, productName, controlPoint, openedWith } = about ?? {};
  const delivery = openedWith?.delivery;
  const closing = closingOf(row);
  return {
    deviationId: row.id,
    number: row.number,
    lot: row.lotId && lotCode && productName ? { lotId: row.lotId, code: lotCode, productName } : undefined,
    receipt: row.receiptId && delivery ? { receiptId: row.receiptId, code: delivery.code, itemName: delivery.item } : undefined,
    controlPoint: controlPoint ?? undefined,
    form: formOfAction(controlPoint?.kind, row.verdict !== null),
    description: openedWith ? aboutDeviation(openedWith) : [],
    substance: substances.find((one) => one === row.substance),
    limit: (row.limit as CriticalLimit | null) ?? undefined,
    verdict: openedWith?.verdict ?? undefined,
    open: !closing || !held.isCovered,
    opened: madeBy(row, names),
    ...showActions(row, names),
    atStake: showWeight(held.atStake, held.unit),
    undecided: showWeight(held.undecided, held.unit),
    covered: held.isCovered,
    ...showClosings(row, names),
  };
}
