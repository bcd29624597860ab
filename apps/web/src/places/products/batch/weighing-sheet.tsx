import type { planBatch, ReplyOf } from '@larderbook/contracts';
import { Facts } from '../../../ui/facts';
import { percentFigure } from '../../../ui/percent-figure';
import { Table } from '../../../ui/table';
import { useSay, useFigures } from '../../../ui/voice';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { useShop } from '../../../api/use-shop';
import { toWeigh } from './to-weigh';
import { inGrams, inHeavy, ownFigure } from './amounts';

export type Batch = ReplyOf<typeof planBatch>;

export function WeighingSheet({ batch, title }: { batch: Batch; title: string }) {
  const say = useSay('batches');
  const { quantity } = useFigures();
  const { heavy, light } = useShop();
  const own = (grams: number) => quantity(ownFigure(grams, heavy, light));
  const facts = [
    { name: say('trimmed-meat'), value: own(batch.meatGrams) },
    { name: say('everything-in'), value: own(batch.totalGrams) },
    { name: say('packed-expected'), value: own(batch.expectedPackedGrams) },
  ];
  return (
    <StampedSheet title={title} stamp={say('not-a-record')}>
      <Facts facts={facts} />
      <Table
        caption={say('to-be-weighed')}
        rows={batch.lines.map((line) => toWeigh(line, batch))}
        rowKey={({ itemName }) => itemName}
        columns={[
          { head: say('what'), cell: ({ itemName }) => itemName },
          { head: say('of-the-meat-block'), figures: true, cell: ({ percent }) => quantity(percentFigure(percent)) },
          { head: say('grams'), figures: true, cell: ({ grams, inward }) => <strong>{quantity(inGrams(grams, inward))}</strong> },
          {
            head: say(heavy === 'lb' ? 'pounds-ounces' : 'kilograms'),
            figures: true,
            cell: ({ grams, inward }) => inHeavy(grams, heavy, inward).map(quantity).join(' '),
          },
        ]}
      />
    </StampedSheet>
  );
}
