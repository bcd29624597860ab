import type { planBatch, ReplyOf } from '@larderbook/contracts';
import { massFromGrams, sayMass, sayPercent, type MassUnit } from '@larderbook/haccp';
import { Facts } from '../../../ui/facts';
import { Table } from '../../../ui/table';
import { WorkedSheet } from '../../../ui/worked-sheet';
import { useShop } from '../use-shop';

export type Batch = ReplyOf<typeof planBatch>;

/** Everything to be weighed for a batch, in grams and in the shop's own unit. */
export function WeighingSheet({ batch, title }: { batch: Batch; title: string }) {
  const { heavy, light } = useShop();
  const own = (grams: number) => say(grams, grams >= gramsIn[heavy] ? heavy : light);
  const facts = [
    { name: 'Trimmed meat', value: own(batch.meatGrams) },
    { name: 'Everything that goes in', value: own(batch.totalGrams) },
    { name: 'Packed, as expected', value: own(batch.expectedPackedGrams) },
  ];
  return (
    <WorkedSheet title={title} stamp="Worked out, not a record">
      <Facts facts={facts} />
      <Table
        caption="To be weighed" rows={batch.lines} rowKey={({ itemName }) => itemName}
        columns={[
          { head: 'What', cell: ({ itemName }) => itemName },
          { head: 'Of the meat block', figures: true, cell: ({ percent }) => sayPercent(percent) },
          { head: 'Grams', figures: true, cell: ({ grams }) => <strong>{sayGrams(grams)}</strong> },
          {
            head: heavy === 'lb' ? 'Pounds, ounces' : 'Kilograms', figures: true,
            cell: ({ grams }) => (heavy === 'lb' ? sayPoundsAndOunces(grams) : say(grams, 'kg', 3)),
          },
        ]}
      />
    </WorkedSheet>
  );
}

const gramsIn: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };

const sayGrams = (grams: number): string => say(grams, 'g', grams < 1000 ? 1 : 0);

/** A pound and more in pounds and ounces, as a butcher's scale shows it; less than a pound in ounces. */
function sayPoundsAndOunces(grams: number): string {
  const pounds = Math.floor(grams / gramsIn.lb);
  const ounces = say(grams - pounds * gramsIn.lb, 'oz', 2);
  return pounds === 0 ? ounces : `${pounds} lb ${ounces}`;
}

const say = (grams: number, unit: MassUnit, decimals = unit === 'g' ? 1 : 2): string =>
  sayMass(massFromGrams(grams.toFixed(9)), unit, decimals);
