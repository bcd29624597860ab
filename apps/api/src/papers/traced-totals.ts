import type { SupplierLotTrace } from '@larderbook/contracts';
import type { SupplierLotData } from '@larderbook/documents';
import type { FormatGrams } from './format-weight';
import type { Telling } from './telling';

type Totals = SupplierLotTrace['totals'];

export function tracedTotals(totals: Totals, weight: FormatGrams, say: Telling['say']): SupplierLotData['totals'] {
  const { refused, refusedGrams, receivedGrams, usedGrams, lots, leftGrams, inWorkGrams, customers } = totals;
  const accepted = totals.deliveries - refused;
  const gone = totals.removedGrams + totals.condemnedGrams;
  const none = say('none-of-it');
  const ofPackages = (count: number, grams: number) => (count === 0 ? none : say('packages-weight', { count, weight: weight(grams) }));
  const orNone = (count: number, told: () => string) => (count === 0 ? none : told());
  const inDeliveries = (count: number, grams: number) => orNone(count, () => say('in-deliveries', { weight: weight(grams), count }));
  const shipped = () => say('packages-to', { packages: ofPackages(totals.shipped, totals.shippedGrams), count: customers });
  return [
    { label: say('received'), value: inDeliveries(accepted, receivedGrams) },
    { label: say('refused'), value: inDeliveries(refused, refusedGrams) },
    { label: say('into-lots'), value: orNone(usedGrams, () => say('now-in-lots', { weight: weight(usedGrams), count: lots })) },
    { label: say('as-delivered'), value: orNone(leftGrams, () => weight(leftGrams)) },
    { label: say('lost-in-all'), value: orNone(gone, () => weight(gone)) },
    { label: say('in-work'), value: orNone(inWorkGrams, () => weight(inWorkGrams)) },
    { label: say('packed-in-all'), value: ofPackages(totals.packed, totals.packedGrams) },
    { label: say('shipped-in-all'), value: orNone(totals.shipped, shipped) },
    { label: say('not-shipped'), value: ofPackages(totals.notShipped, totals.notShippedGrams) },
  ];
}

/** Weight without a record is named, never hidden. */
export function accountedOnPaper(
  { accountedPercent, unexplainedGrams }: Totals,
  weight: FormatGrams,
  say: Telling['say'],
): SupplierLotData['accounted'] {
  if (accountedPercent === '') return { value: say('nothing-received') };
  const because = unexplainedGrams === 0 ? say('of-received') : say('unexplained-in-all', { weight: weight(unexplainedGrams) });
  return { value: `${accountedPercent} %`, because };
}
