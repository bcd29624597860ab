import type { PlanContent } from '@larderbook/contracts';
import type { ProductKey } from './products';
import type { ItemKey } from './shop';

/** What the story knows of the shop it is furnishing: ids by the names used in these files. */
export type World = {
  items: Record<ItemKey, string>;
  suppliers: Record<string, string>;
  customers: Record<string, string>;
  instruments: Record<string, string>;
  products: Record<ProductKey, { productId: string; plan: PlanContent }>;
  /** Deliveries that were accepted, with the pounds still in the walk-in; ingredients count as plenty. */
  receipts: { receiptId: string; item: ItemKey; pounds: number; at: Date }[];
  /** The number of the next one in the pad. */
  deliveryNotes: number;
};

/** The oldest delivery that still holds this much, and takes it from there. */
export function takeFrom(world: World, item: ItemKey, pounds: number, at: Date): string {
  const found = world.receipts.find((receipt) => receipt.item === item && receipt.pounds >= pounds && receipt.at <= at);
  if (!found) throw new Error(`The story has no delivery of ${item} with ${pounds} lb left`);
  found.pounds -= pounds;
  return found.receiptId;
}
