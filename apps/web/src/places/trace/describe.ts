import type { Trace } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

type Described = Pick<Trace['start'], 'kind' | 'what' | 'supplier' | 'supplierLot' | 'isRefused' | 'count'>;

/** As in "Pork shoulder from Holt, lot H7", "20 packages of Sausage". */
export function describe({ kind, what, supplier = '', supplierLot = '', isRefused, count = 0 }: Described, say: SayOf<'trace'>): string {
  if (kind === 'receipt') return say(isRefused ? 'what-refused' : 'what-receipt', { item: what, supplier, lot: supplierLot });
  return kind === 'packing' ? say('what-packing', { count, product: what }) : what;
}
