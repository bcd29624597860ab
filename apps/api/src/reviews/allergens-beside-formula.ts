import { allergens as known, type Lot } from '@larderbook/contracts';
import { itemsNow } from '../products/items-now';
import type { Tx } from '../platform/database';

/** Nothing in the formula holds these allergens. */
export type StrangeAllergens = { itemName: string; allergens: (typeof known)[number][] };

/** Uses items as described now. Corrected entries do not count. */
export async function allergensBesideFormula(tx: Tx, { weighings, targets }: Lot): Promise<StrangeAllergens[]> {
  const beside = weighings.filter(({ flags, amendedBy }) => flags.includes('not-in-formula') && !amendedBy);
  if (beside.length === 0) return [];
  const itemIds = new Set(beside.map(({ item }) => item.itemId));
  const inFormula = targets.map(({ itemId }) => itemId);
  const items = await itemsNow(tx, [...itemIds, ...inFormula]);
  const expected = new Set(inFormula.flatMap((itemId) => items.get(itemId)?.allergens ?? []));
  return [...itemIds].flatMap((itemId) => {
    const { name = '', allergens = [] } = items.get(itemId) ?? {};
    const strange = known.filter((allergen) => allergens.includes(allergen) && !expected.has(allergen));
    return strange.length > 0 ? [{ itemName: name, allergens: strange }] : [];
  });
}
