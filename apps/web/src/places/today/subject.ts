import type { Deviation } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

/** As in "SMS-26328-1 Smoked sausage". */
export function subjectOf({ lot, receipt }: Pick<Deviation, 'lot' | 'receipt'>, say: SayOf<'today'>): string {
  if (lot) return say('subject', { code: lot.code, name: lot.productName });
  return receipt ? say('subject', { code: receipt.code, name: receipt.itemName }) : '';
}
