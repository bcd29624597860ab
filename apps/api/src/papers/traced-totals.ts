import type { SupplierLotTrace } from '@larderbook/contracts';
import type { SupplierLotData } from '@larderbook/documents';
import type { SayGrams } from './say-weight';

type Totals = SupplierLotTrace['totals'];

/** What came of a supplier's lot in all, in weight and packages, in the words of its page. */
export function tracedTotals(totals: Totals, weight: SayGrams): SupplierLotData['totals'] {
  const { refused, refusedGrams, receivedGrams, usedGrams, lots, leftGrams, inWorkGrams, customers } = totals;
  const accepted = totals.deliveries - refused;
  const gone = totals.removedGrams + totals.condemnedGrams;
  const ofPackages = (count: number, grams: number) => (count === 0 ? 'none' : `${many(count, 'package')}, ${weight(grams)}`);
  const orNone = (count: number, said: string) => (count === 0 ? 'none' : said);
  return [
    { label: 'Received', value: orNone(accepted, `${weight(receivedGrams)} in ${many(accepted, 'delivery', 'deliveries')}`) },
    { label: 'Refused', value: orNone(refused, `${weight(refusedGrams)} in ${many(refused, 'delivery', 'deliveries')}`) },
    { label: 'Went into lots', value: orNone(usedGrams, `${weight(usedGrams)}, now in ${many(lots, 'lot')}`) },
    { label: 'Still as delivered', value: orNone(leftGrams, weight(leftGrams)) },
    { label: 'Lost, taken out, condemned', value: orNone(gone, weight(gone)) },
    { label: 'Still in work', value: orNone(inWorkGrams, weight(inWorkGrams)) },
    { label: 'Packed', value: ofPackages(totals.packed, totals.packedGrams) },
    {
      label: 'Shipped',
      value: orNone(totals.shipped, `${ofPackages(totals.shipped, totals.shippedGrams)}, to ${many(customers, 'customer')}`),
    },
    { label: 'Not shipped', value: ofPackages(totals.notShipped, totals.notShippedGrams) },
  ];
}

/** How much of what was received has a record; a part without one is named, never hidden. */
export function sayAccounted({ accountedPercent, unexplainedGrams }: Totals, weight: SayGrams): SupplierLotData['accounted'] {
  if (accountedPercent === '') return { value: 'nothing was received' };
  const because = unexplainedGrams === 0 ? 'Of what was received.' : `${weight(unexplainedGrams)} no record explains.`;
  return { value: `${accountedPercent} %`, because };
}

export const many = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`;
