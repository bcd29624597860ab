import {
  compose,
  saltAndWater,
  weightWithin,
  type Composition,
  type Holding,
  type RestrictedSubstance,
  type SaltAndWater,
  type ScaleErrors,
} from '@larderbook/haccp';
import { itemsNow, type ItemNow } from '../products/items-now';
import type { Tx } from '../platform/database';
import { entriesIn, type Entry } from './entries-in.queries';

/** `percent` is of the restricted substance. */
type WeighedRow = {
  id: string;
  lotId: string;
  itemId: string;
  name: string;
  mass: bigint;
  substance?: RestrictedSubstance;
  percent?: number;
  saltPercent?: number;
  waterPercent?: number;
};
type ReworkedRow = { mass: bigint; code: string; of: Composition; from: Pick<WentIn, 'held' | 'weighings' | 'reworked' | 'phase'> };

export type WentIn = {
  /** As trimmed. */
  inputs: readonly Entry[];
  /** Meat of deliveries, with what its item holds. */
  held: readonly Holding[];
  weighings: readonly WeighedRow[];
  reworked: readonly ReworkedRow[];
  composition: Composition;
  /** Only as far as the items state salt and water. */
  phase: SaltAndWater;
  /** Errors that the plan states, for conditions on the formula. */
  scales?: ScaleErrors;
};

export async function wentInto(tx: Tx, lotId: string): Promise<WentIn> {
  const entries = await entriesIn(tx, [lotId]);
  const itemIds = entries.flatMap(({ itemId }) => (itemId ? [itemId] : []));
  return adder(entries, await itemsNow(tx, [...new Set(itemIds)]))(lotId);
}

export function adder(entries: readonly Entry[], items: ReadonlyMap<string, ItemNow>): (lotId: string) => WentIn {
  const added = new Map<string, WentIn>();
  return function add(lotId: string): WentIn {
    const before = added.get(lotId);
    if (before) return before;
    const own = entries.filter((entry) => entry.lotId === lotId);
    const inputs = own.filter(({ isWeighed }) => !isWeighed);
    const weighings = own.flatMap((entry) => (entry.isWeighed ? weighedOf(entry, items) : []));
    const reworked = inputs.flatMap(({ source, mass }): ReworkedRow[] => {
      if (!source) return [];
      const from = add(source.lotId);
      return [{ mass, code: source.code, of: from.composition, from }];
    });
    const held = inputs.filter(({ source }) => !source).map((entry) => holdingOf(entry, items));
    const wentIn = addUp({ inputs, held, weighings, reworked });
    added.set(lotId, wentIn);
    return wentIn;
  };
}

function holdingOf({ itemId, mass }: Entry, items: ReadonlyMap<string, ItemNow>): Holding {
  const { name = { code: 'item-not-known' }, saltPercent, waterPercent } = items.get(itemId ?? '') ?? {};
  return { mass, name, saltPercent, waterPercent };
}

/** An item found to be restricted later counts by what it now says. */
function weighedOf({ id, lotId, itemId, mass, percent }: Entry, items: ReadonlyMap<string, ItemNow>): WeighedRow[] {
  const item = itemId ? items.get(itemId) : undefined;
  if (!item) return [];
  const { name, substance, fractionPercent, saltPercent, waterPercent } = item;
  const holds = { substance, percent: percent ?? fractionPercent, saltPercent, waterPercent };
  return [{ id, lotId, itemId: item.itemId, name, mass, ...holds }];
}

export const withWeighing = (wentIn: WentIn, weighing: WeighedRow, correctedId?: string): WentIn =>
  addUp({ ...wentIn, weighings: [...wentIn.weighings.filter(({ id }) => id !== correctedId), weighing] });

/** The worst case by the scale errors: the least salt in the most water. */
export const phaseWithin = (
  { held, weighings, reworked }: Pick<WentIn, 'held' | 'weighings' | 'reworked'>,
  scales: ScaleErrors,
): SaltAndWater =>
  saltAndWater(
    [...held.map((one) => ({ ...one, error: scales.meat })), ...weighings.map((one) => ({ ...one, error: scales.ingredient }))],
    reworked.map(({ mass, code, of, from }) => ({
      mass,
      name: reworkOf(code),
      all: of.all,
      of: phaseWithin(from, scales),
      error: scales.meat,
      allWithin: weightWithin(of, 'all', scales),
    })),
  );

export const reworkOf = (code: string) => ({ code: 'rework-of', figures: { code } });

function addUp({ inputs, held, weighings, reworked, scales }: Omit<WentIn, 'composition' | 'phase'>): WentIn {
  const freshMeat = held.map(({ mass }) => mass);
  const phase = saltAndWater(
    [...held, ...weighings],
    reworked.map(({ mass, code, of, from }) => ({ mass, name: reworkOf(code), all: of.all, of: from.phase })),
  );
  return { inputs, held, weighings, reworked, scales, composition: compose({ freshMeat, weighed: weighings, reworked }), phase };
}
