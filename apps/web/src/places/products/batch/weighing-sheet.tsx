import type { planBatch, ReplyOf } from '@larderbook/contracts';
import { sayPercent } from '@larderbook/haccp';
import { Facts } from '../../../ui/facts';
import { Table } from '../../../ui/table';
import { WorkedSheet } from '../../../ui/worked-sheet';
import { useShop } from '../../../api/use-shop';
import { toWeigh } from './to-weigh';
import { say, sayInGrams, sayOwn, sayPoundsAndOunces } from './say-amounts';

export type Batch = ReplyOf<typeof planBatch>;

/** Everything to be weighed for a batch, in grams and in the shop's own unit. */
export function WeighingSheet({ batch, title }: { batch: Batch; title: string }) {
  const { heavy, light } = useShop();
  const own = (grams: number) => sayOwn(grams, heavy, light);
  const facts = [
    { name: 'Trimmed meat', value: own(batch.meatGrams) },
    { name: 'Everything that goes in', value: own(batch.totalGrams) },
    { name: 'Packed, as expected', value: own(batch.expectedPackedGrams) },
  ];
  return (
    <WorkedSheet title={title} stamp="Worked out, not a record">
      <Facts facts={facts} />
      <Table
        caption="To be weighed"
        rows={batch.lines.map((line) => toWeigh(line, batch))}
        rowKey={({ itemName }) => itemName}
        columns={[
          { head: 'What', cell: ({ itemName }) => itemName },
          { head: 'Of the meat block', figures: true, cell: ({ percent }) => sayPercent(percent) },
          { head: 'Grams', figures: true, cell: ({ grams, inward }) => <strong>{sayInGrams(grams, inward)}</strong> },
          {
            head: heavy === 'lb' ? 'Pounds, ounces' : 'Kilograms',
            figures: true,
            cell: ({ grams, inward }) => (heavy === 'lb' ? sayPoundsAndOunces(grams, inward) : say(grams, 'kg', 3, inward)),
          },
        ]}
      />
    </WorkedSheet>
  );
}
