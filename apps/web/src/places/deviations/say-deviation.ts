import type { Deviation } from '@larderbook/contracts';

/** What a deviation is about: "Lot 26064-2, Smoked ring sausage". */
export function sayAbout({ lot, receipt }: Pick<Deviation, 'lot' | 'receipt'>): string {
  if (lot) return `Lot ${lot.code}, ${lot.productName}`;
  return receipt ? `Delivery ${receipt.code}, ${receipt.itemName}` : 'No product named';
}
