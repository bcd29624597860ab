import type { ControlPoint, Judged } from '@larderbook/contracts';
import type { HumidityKept } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';
import { madeBy, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { femtograms, massUnit } from '../platform/kept-weight';
import { judgedAsKept } from '../lots/kept-judged';
import { plansById } from '../products/plan-in-force';
import { itemsNow } from '../products/items-now';
import { formatWeight } from './format-weight';

export type Logged = {
  id: string;
  lotId: string;
  lotCode: string;
  productId: string;
  /** "151.5" and "°F"; an answer has no unit. */
  value: string;
  unit: string;
  seen?: string;
  humidity?: HumidityKept;
  target?: string;
  what?: string;
  probe?: string;
  instrumentId?: string;
  judged: Judged[];
  /** Flags are those set when the entry was made. */
  flags: string[];
  made: { name: string; at: string; recordedAt: string };
  amends?: string;
  reason: string;
  voided: boolean;
  /** What voided the entry, or corrected it out of this log. */
  struckBy?: Logged;
};

export async function entriesById(tx: Tx, point: ControlPoint, ids: string[], names: PersonNames): Promise<Logged[]> {
  if (ids.length === 0) return [];
  return point.takenAs === 'weighings' ? weighingsById(tx, ids, names) : readingsById(tx, ids, names);
}

const withLot = { lot: { select: { code: true, productId: true, planId: true } } } as const;
const inOrder = [{ takenAt: 'asc' as const }, { id: 'asc' as const }];

async function readingsById(tx: Tx, ids: string[], names: PersonNames): Promise<Logged[]> {
  const rows = await tx.reading.findMany({ where: { id: { in: ids } }, include: withLot, orderBy: inOrder });
  const plans = await plansOf(tx, rows);
  return rows.map((row) => ({
    ...commonOf(row, names, plans),
    value: row.value === null ? (row.answer ? 'yes' : 'no') : row.value.toString(),
    unit: row.unit ?? '',
    seen: row.seen || undefined,
    humidity: (row.humidity as HumidityKept | null) ?? undefined,
    probe: row.probe || undefined,
  }));
}

async function weighingsById(tx: Tx, ids: string[], names: PersonNames): Promise<Logged[]> {
  const rows = await tx.weighing.findMany({ where: { id: { in: ids } }, include: withLot, orderBy: inOrder });
  const items = await itemsNow(tx, [...new Set(rows.map(({ itemId }) => itemId))]);
  const plans = await plansOf(tx, rows);
  return rows.map((row) => ({
    ...commonOf(row, names, plans),
    value: row.weightValue.toString(),
    unit: row.weightUnit,
    what: items.get(row.itemId)?.name,
    target: row.targetGrams ? formatWeight(femtograms(row.targetGrams), massUnit(row.weightUnit)) : undefined,
  }));
}

type Row = {
  id: string;
  lotId: string;
  lot: { code: string; productId: string; planId: string };
  instrumentId: string | null;
  judged: Prisma.JsonValue;
  flags: string[];
  amendsId: string | null;
  voided: boolean | null;
  reason: string;
  recordedBy: string;
  recordedAt: Date;
  takenAt: Date;
  station: string;
};

/** Each entry was judged by the plan of its lot. */
const plansOf = (tx: Tx, rows: readonly Row[]) => plansById(tx, [...new Set(rows.map(({ lot }) => lot.planId))]);

const commonOf = (row: Row, names: PersonNames, plans: Awaited<ReturnType<typeof plansOf>>) => ({
  id: row.id,
  lotId: row.lotId,
  lotCode: row.lot.code,
  productId: row.lot.productId,
  instrumentId: row.instrumentId ?? undefined,
  judged: judgedAsKept(row.judged, plans.get(row.lot.planId)?.content.controlPoints ?? []),
  flags: row.flags,
  voided: row.voided === true,
  made: madeBy(row, names),
  amends: row.amendsId ?? undefined,
  reason: row.reason,
});
