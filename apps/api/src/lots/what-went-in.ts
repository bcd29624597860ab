import { compose, type Composition, type RestrictedSubstance } from '@larderbook/haccp';
import { itemsNow, type ItemNow } from '../plan/items-now';
import type { Tx } from '../platform/database';
import { entriesIn, type Entry } from './entries-in.queries';

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
export type WentIn = {
  /** Meat of deliveries and rework of earlier lots, as trimmed. */
  inputs: readonly Entry[];
  weighings: readonly WeighedRow[];
  reworked: readonly ReworkedRow[];
  composition: Composition;
};

/** What went into one lot. */
export async function wentInto(tx: Tx, lotId: string): Promise<WentIn> {
  const entries = await entriesIn(tx, [lotId]);
  const itemIds = entries.flatMap(({ isWeighed, itemId }) => (isWeighed && itemId ? [itemId] : []));
  return adder(entries, await itemsNow(tx, [...new Set(itemIds)]))(lotId);
}

/** Adds up each lot from the entries in it and in the lots that were reworked into it. */
export function adder(entries: readonly Entry[], items: ReadonlyMap<string, ItemNow>): (lotId: string) => WentIn {
  const added = new Map<string, WentIn>();
  return function add(lotId: string): WentIn {
    const before = added.get(lotId);
    if (before) return before;
    const own = entries.filter((entry) => entry.lotId === lotId);
    const inputs = own.filter(({ isWeighed }) => !isWeighed);
    const weighings = own.flatMap((entry) => (entry.isWeighed ? weighedOf(entry, items) : []));
    const reworked = inputs.flatMap(({ source, mass }) =>
      source ? [{ mass, code: source.code, of: add(source.lotId).composition }] : [],
    );
    const wentIn = addUp({ inputs, weighings, reworked });
    added.set(lotId, wentIn);
    return wentIn;
  };
}

/** An item found to be restricted only after it was weighed counts from then on with what the item says. */
function weighedOf({ id, lotId, itemId, mass, percent }: Entry, items: ReadonlyMap<string, ItemNow>): WeighedRow[] {
  const item = itemId ? items.get(itemId) : undefined;
  if (!item) return [];
  const { name, substance, fractionPercent } = item;
  return [{ id, lotId, itemId: item.itemId, name, mass, substance, percent: percent ?? fractionPercent }];
}

/** As it will be with one more weighing, which may take the place of the one it corrects. */
export const withWeighing = (wentIn: WentIn, weighing: WeighedRow, correctedId?: string): WentIn =>
  addUp({ ...wentIn, weighings: [...wentIn.weighings.filter(({ id }) => id !== correctedId), weighing] });

function addUp({ inputs, weighings, reworked }: Omit<WentIn, 'composition'>): WentIn {
  const freshMeat = inputs.filter(({ source }) => !source).map(({ mass }) => mass);
  return { inputs, weighings, reworked, composition: compose({ freshMeat, weighed: weighings, reworked }) };
}
