import type { Disposition, ProductConcerned } from '@larderbook/contracts';
import { massFromGrams, formatMass } from '@larderbook/haccp';

type Weight = ProductConcerned['undecided'];

/** The decided weight is to decide again, and is where it was. */
export function givenBack(product: ProductConcerned, { lotId, receiptId, decision, weight }: Disposition): ProductConcerned {
  if (product.lotId !== lotId || product.receiptId !== receiptId) return product;
  const { undecided, here, left } = product;
  const isGone = decision === 'condemn' || decision === 'return';
  return {
    ...product,
    undecided: more(undecided, weight),
    here: isGone ? more(here, weight) : here,
    left: decision === 'recall' ? more(left, weight) : left,
  };
}

function more(weight: Weight, { grams }: Weight): Weight {
  const sum = weight.grams + grams;
  return { ...weight, grams: sum, value: Number.parseFloat(formatMass(massFromGrams(sum.toFixed(9)), weight.unit)) };
}
