import { decimalText } from '@larderbook/haccp';
import type { Lot } from '@larderbook/contracts';
import { sayGrams } from '../../api/say-grams';
import { useShop } from '../../api/use-shop';
import { Facts } from '../../ui/facts';
import { dateWords } from '../../ui/moment';
import { Stack } from '../../ui/stack';
import { Table } from '../../ui/table';

type Target = Lot['targets'][number];

const counts = ({ amendedBy }: { amendedBy?: string }) => amendedBy === undefined;
const sayWeight = ({ value, unit }: { value: number; unit: string }) => `${value} ${unit}`;

/** Inputs and weighings in brief, and what was packed, taken out and lost. */
export function WentIn({ lot }: { lot: Lot }) {
  const { units } = useShop();
  const isRestricted = lot.targets.some(({ substance }) => substance !== undefined);
  return (
    <Stack>
      <Table
        caption="Meat"
        rows={lot.inputs.filter(counts)}
        rowKey={({ inputId }) => inputId}
        empty={<p>No meat was put in.</p>}
        columns={[
          { head: 'From', cell: ({ from }) => from.what },
          {
            head: 'Delivery or lot',
            cell: ({ from }) => [from.code, from.supplier, from.supplierLot && `lot ${from.supplierLot}`].filter(Boolean).join(', '),
          },
          { head: 'Taken', cell: ({ weight }) => sayWeight(weight), figures: true },
          { head: 'Trimmed meat', cell: ({ trimmed }) => sayWeight(trimmed), figures: true },
        ]}
      />
      <Table
        caption="Ingredients"
        rows={lot.targets.filter(({ part }) => part === 'ingredient')}
        rowKey={({ itemId }) => itemId}
        empty={<p>The formula has no ingredients besides meat.</p>}
        columns={[
          { head: 'Ingredient', cell: ({ itemName }) => itemName },
          {
            head: 'Target',
            cell: ({ targetGrams }) => (targetGrams === undefined ? '–' : sayGrams(targetGrams, units)),
            figures: true,
          },
          {
            head: 'Weighed',
            cell: ({ weighedGrams }) => (weighedGrams > 0 ? sayGrams(weighedGrams, units) : 'not weighed'),
            figures: true,
          },
          ...(isRestricted
            ? [
                {
                  head: 'Ingoing',
                  cell: ({ ppm, substance }: Target) => (ppm === undefined || !substance ? '' : `${ppm} ppm ${substance}`),
                  figures: true,
                },
              ]
            : []),
        ]}
      />
      <Facts facts={factsOf(lot, units)} />
    </Stack>
  );
}

function factsOf(lot: Lot, units: 'US' | 'metric') {
  const packed = lot.packings.reduce((sum, { count, net }) => sum + count * net.grams, 0);
  return [
    { name: 'Meat block', value: sayGrams(lot.meatBlockGrams, units) },
    { name: 'Packed', value: packed > 0 ? `${lot.packages} packages, ${sayGrams(packed, units)}` : 'nothing' },
    ...(packed > 0 && lot.meatBlockGrams > 0
      ? [
          {
            name: 'Packed of the meat block',
            value: `${decimalText(Math.round((packed / lot.meatBlockGrams) * 1000), 1)} %`,
          },
        ]
      : []),
    ...lot.packings.map(({ code, useBy }) => ({
      name: lot.packings.length > 1 ? `Use by, ${code}` : 'Use by',
      value: dateWords(useBy),
    })),
    ...lot.removals.map(({ kind, weight }) => ({
      name: kind.charAt(0).toUpperCase() + kind.slice(1),
      value: sayWeight(weight),
    })),
  ];
}
