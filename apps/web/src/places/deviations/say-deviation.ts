import type { Deviation } from '@larderbook/contracts';
import { isUnconfirmed, saySupport, type Source } from '@larderbook/haccp';

/** What a deviation is about: "Lot 26064-2, Smoked ring sausage". */
export function sayAbout({ lot, receipt }: Pick<Deviation, 'lot' | 'receipt'>): string {
  if (lot) return `Lot ${lot.code}, ${lot.productName}`;
  return receipt ? `Delivery ${receipt.code}, ${receipt.itemName}` : 'No product named';
}

/** Where the figure of the limit comes from and what the plan says supports it; an unconfirmed one says so. */
export const saySource = (source: Source): string =>
  [[source.citation, source.edition, isUnconfirmed(source) && 'not confirmed'].filter(Boolean).join(', '), ...saySupport(source)].join(
    '. ',
  );
