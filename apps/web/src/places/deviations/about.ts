import type { Deviation } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

/** As in "Lot 26064-2, Smoked ring sausage". */
export function about({ lot, receipt }: Pick<Deviation, 'lot' | 'receipt'>, say: SayOf<'deviations'>): string {
  if (lot) return say('of-lot', { code: lot.code, product: lot.productName });
  return receipt ? say('of-delivery', { code: receipt.code, item: receipt.itemName }) : say('no-product');
}
