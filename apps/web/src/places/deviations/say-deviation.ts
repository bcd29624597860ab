import type { Deviation } from '@larderbook/contracts';
import type { Source } from '@larderbook/haccp';

/** What a deviation is about: "Lot 26064-2, Smoked ring sausage". */
export function sayAbout({ lot, receipt }: Pick<Deviation, 'lot' | 'receipt'>): string {
  if (lot) return `Lot ${lot.code}, ${lot.productName}`;
  return receipt ? `Delivery ${receipt.code}, ${receipt.itemName}` : 'No product named';
}

/** Where the figure of the limit comes from; an unconfirmed one says so. */
export const saySource = ({ citation, edition, confirmed }: Source): string =>
  [citation, edition, !confirmed && 'not confirmed'].filter(Boolean).join(', ');
