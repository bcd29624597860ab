import { compose, type Composition, type RestrictedSubstance } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';
import { itemsNow } from '../plan/items-now';
import type { Tx } from '../platform/database';
import { femtograms } from '../platform/kept-weight';

/** An input that counts; `mass` as trimmed. */
export type InputRow = { id: string; lotId: string; sourceLotId: string | null; mass: bigint };
/** A weighing that counts, with the restricted substance its item contains and how much of it. */
export type WeighedRow = {
  id: string;
  lotId: string;
  itemId: string;
  name: string;
  mass: bigint;
  substance?: RestrictedSubstance;
  percent?: number;
};
export type ReworkedRow = { mass: bigint; code: string; of: Composition };

/** Everything that counts as having gone into a lot, and what it adds up to. */
export type WentIn = { inputs: InputRow[]; weighings: WeighedRow[]; reworked: ReworkedRow[]; composition: Composition };

/** What went into each of these lots. Rework is followed to the lots it came from, level by level. */
export async function whatWentIn(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, WentIn>> {
  const inputs: InputRow[] = [];
  const known = new Set<string>();
  for (let level = [...new Set(lotIds)]; level.length > 0;) {
    level.forEach((lotId) => known.add(lotId));
    const found = await inputsOf(tx, level);
    inputs.push(...found);
    const sources = found.flatMap(({ sourceLotId }) => sourceLotId ?? []);
    level = [...new Set(sources)].filter((lotId) => !known.has(lotId));
  }
  const weighings = await weighingsOf(tx, [...known]);
  const codes = await codesOf(
    tx,
    inputs.flatMap(({ sourceLotId }) => sourceLotId ?? []),
  );
  const add = adder(inputs, weighings, codes);
  return new Map(lotIds.map((lotId) => [lotId, add(lotId)]));
}

function adder(inputs: InputRow[], weighings: WeighedRow[], codes: ReadonlyMap<string, string>) {
  const added = new Map<string, WentIn>();
  return function add(lotId: string): WentIn {
    const before = added.get(lotId);
    if (before) return before;
    const own = inputs.filter((input) => input.lotId === lotId);
    const weighed = weighings.filter((weighing) => weighing.lotId === lotId);
    const reworked = own.flatMap(({ sourceLotId, mass }) =>
      sourceLotId ? [{ mass, code: codes.get(sourceLotId) ?? '', of: add(sourceLotId).composition }] : [],
    );
    const wentIn = addUp({ inputs: own, weighings: weighed, reworked });
    added.set(lotId, wentIn);
    return wentIn;
  };
}

function addUp({ inputs, weighings, reworked }: Omit<WentIn, 'composition'>): WentIn {
  const freshMeat = inputs.filter(({ sourceLotId }) => !sourceLotId).map(({ mass }) => mass);
  return { inputs, weighings, reworked, composition: compose({ freshMeat, weighed: weighings, reworked }) };
}

/** As it will be with one more weighing, which may take the place of the one it corrects. */
export const withWeighing = (wentIn: WentIn, weighing: WeighedRow, correctedId?: string): WentIn =>
  addUp({ ...wentIn, weighings: [...wentIn.weighings.filter(({ id }) => id !== correctedId), weighing] });

/** What went into one lot. */
export async function wentInto(tx: Tx, lotId: string): Promise<WentIn> {
  return (await whatWentIn(tx, [lotId])).get(lotId) ?? addUp({ inputs: [], weighings: [], reworked: [] });
}

async function inputsOf(tx: Tx, lotIds: string[]): Promise<InputRow[]> {
  const rows = await tx.$queryRaw<{ id: string; lotId: string; sourceLotId: string | null; grams: Prisma.Decimal }[]>`
    SELECT i.id, i.lot_id AS "lotId", i.source_lot_id AS "sourceLotId", i.trimmed_grams AS grams FROM lot_input i
    WHERE i.lot_id = ANY(${lotIds}::uuid[]) AND NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
    ORDER BY i.taken_at, i.id`;
  return rows.map(({ grams, ...row }) => ({ ...row, mass: femtograms(grams) }));
}

/** An item found to be restricted only after it was weighed counts from then on with what the item says. */
async function weighingsOf(tx: Tx, lotIds: string[]): Promise<WeighedRow[]> {
  const rows = await tx.$queryRaw<
    { id: string; lotId: string; itemId: string; grams: Prisma.Decimal; percent: Prisma.Decimal | null }[]
  >`
    SELECT w.id, w.lot_id AS "lotId", w.item_id AS "itemId", w.grams, w.fraction_percent AS percent FROM weighing w
    WHERE w.lot_id = ANY(${lotIds}::uuid[]) AND NOT EXISTS (SELECT FROM weighing a WHERE a.amends_id = w.id)
    ORDER BY w.taken_at, w.id`;
  const items = await itemsNow(tx, [...new Set(rows.map(({ itemId }) => itemId))]);
  return rows.map(({ grams, percent, ...row }) => {
    const item = items.get(row.itemId);
    return {
      ...row,
      name: item?.name ?? '',
      mass: femtograms(grams),
      substance: item?.substance,
      percent: percent?.toNumber() ?? item?.fractionPercent,
    };
  });
}

async function codesOf(tx: Tx, lotIds: string[]): Promise<Map<string, string>> {
  if (lotIds.length === 0) return new Map();
  const lots = await tx.lot.findMany({ where: { id: { in: lotIds } }, select: { id: true, code: true } });
  return new Map(lots.map(({ id, code }) => [id, code]));
}
