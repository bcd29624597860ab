import type { Lot } from '@larderbook/contracts';
import { keptWeightOf } from '../platform/kept-weight';
import { corrections, listed } from './corrections';
import type { Shown } from './read-shown';

type Input = Lot['inputs'][number];

/** Oldest first, corrected ones included. */
export function showInputs({ inputs, people, names }: Shown): Input[] {
  const correction = corrections(inputs, people);
  return listed(inputs).map((row) => ({
    inputId: row.id,
    from: cameFrom(row, names),
    weight: keptWeightOf(row),
    trimmed: keptWeightOf({ weightValue: row.trimmedValue, weightUnit: row.trimmedUnit, grams: row.trimmedGrams }),
    ...correction(row),
  }));
}

function cameFrom({ receipt, sourceLot }: Shown['inputs'][number], names: Shown['names']): Input['from'] {
  if (sourceLot) {
    return { lotId: sourceLot.id, code: sourceLot.code, what: names.get(sourceLot.productId) ?? '' };
  }
  return {
    receiptId: receipt?.id,
    code: receipt?.code ?? '',
    what: names.get(receipt?.itemId ?? '') ?? '',
    supplier: names.get(receipt?.supplierId ?? ''),
    supplierLot: receipt?.supplierLot,
  };
}
