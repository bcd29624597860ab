import { decimalText, massIn } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { removalKinds, type Lot } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Facts } from '../../ui/facts';
import { Stack } from '../../ui/stack';
import { Table } from '../../ui/table';
import { useClock, useFigures, useSay } from '../../ui/voice';

type Target = Lot['targets'][number];

const counts = ({ amendedBy }: { amendedBy?: string }) => amendedBy === undefined;

export function WentIn({ lot }: { lot: Lot }) {
  const say = useSay('reviews');
  const sayLimits = useSay('limits');
  const figures = useFigures();
  const { units } = useShop();
  const weight = (grams: number) => figures.quantity(massIn(units, grams));
  const isRestricted = lot.targets.some(({ substance }) => substance !== undefined);
  return (
    <Stack>
      <Table
        caption={say('meat')}
        rows={lot.inputs.filter(counts)}
        rowKey={({ inputId }) => inputId}
        empty={<p>{say('no-meat')}</p>}
        columns={[
          { head: say('from'), cell: ({ from }) => from.what },
          {
            head: say('delivery-or-lot'),
            cell: ({ from }) =>
              from.supplier && from.supplierLot
                ? say('supplier-lot', { code: from.code, supplier: from.supplier, lot: from.supplierLot })
                : [from.code, from.supplier].filter(Boolean).join(', '),
          },
          { head: say('taken'), cell: (input) => figures.quantity(input.weight), figures: true },
          { head: say('trimmed-meat'), cell: ({ trimmed }) => figures.quantity(trimmed), figures: true },
        ]}
      />
      <Table
        caption={say('ingredients')}
        rows={lot.targets.filter(({ part }) => part === 'ingredient')}
        rowKey={({ itemId }) => itemId}
        empty={<p>{say('no-ingredients')}</p>}
        columns={[
          { head: say('ingredient'), cell: ({ itemName }) => itemName },
          {
            head: say('target'),
            cell: ({ targetGrams }) => (targetGrams === undefined ? '–' : weight(targetGrams)),
            figures: true,
          },
          {
            head: say('weighed'),
            cell: ({ weighedGrams }) => (weighedGrams > 0 ? weight(weighedGrams) : say('not-weighed')),
            figures: true,
          },
          ...(isRestricted
            ? [
                {
                  head: say('ingoing'),
                  cell: ({ ppm, substance }: Target) =>
                    ppm === undefined || !substance
                      ? ''
                      : `${figures.quantity({ value: ppm, unit: 'ppm' })} ${sayLimits(codeOf('substance', substance))}`,
                  figures: true,
                },
              ]
            : []),
        ]}
      />
      <Facts facts={useFacts(lot)} />
    </Stack>
  );
}

function useFacts({ packings, packages, meatBlockGrams, removals }: Lot) {
  const say = useSay('reviews');
  const sayEntry = useSay('entries');
  const figures = useFigures();
  const clock = useClock();
  const { units } = useShop();
  const packed = packings.reduce((sum, { count, net }) => sum + count * net.grams, 0);
  const share = decimalText(Math.round((packed / meatBlockGrams) * 1000), 1);
  const named = (kind: string): string => {
    const known = removalKinds.find((each) => each === kind);
    return known ? sayEntry(codeOf('removed', known)) : kind;
  };
  return [
    { name: say('meat-block'), value: figures.quantity(massIn(units, meatBlockGrams)) },
    {
      name: say('packed'),
      value: packed > 0 ? say('packages-weighing', { count: packages, weight: massIn(units, packed) }) : say('nothing'),
    },
    ...(packed > 0 && meatBlockGrams > 0 ? [{ name: say('packed-of-block'), value: figures.quantity({ value: share, unit: '%' }) }] : []),
    ...packings.map(({ code, useBy }) => ({
      name: packings.length > 1 ? say('use-by-of', { code }) : say('use-by'),
      value: clock.calendarDay(useBy),
    })),
    ...removals.map(({ kind, weight }) => ({ name: named(kind), value: figures.quantity(weight) })),
  ];
}
