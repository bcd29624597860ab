import { listLots, listReceipts, type Lot } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Loading } from '../../../ui/loading';
import { dayWords } from '../../../ui/moment';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { Tiles } from '../../../ui/tiles';
import { nextThing } from '../next/next-thing';
import { sayGrams } from '../say/say-grams';

/** Where meat comes from: a delivery with what is left of it, or rework of an earlier lot. */
export type Source = { receiptId?: string; lotId?: string; code: string; what: string; leftGrams?: number };

/**
 * The deliveries that meat may come from, first those of the meat that is put in next, then oldest first, each with what
 * is left of it; rework is one tap away.
 */
export function SourceChoice({ lot, onChoose }: { lot: Lot; onChoose: (source: Source) => void }) {
  const [isRework, setIsRework] = useState(false);
  return (
    <Stack gap="near">
      {isRework ? <EarlierLots lot={lot} onChoose={onChoose} /> : <Deliveries lot={lot} onChoose={onChoose} />}
      <div>
        <Button look="quiet" onClick={() => setIsRework(!isRework)}>
          {isRework ? 'From a delivery instead' : 'Rework from an earlier lot'}
        </Button>
      </div>
    </Stack>
  );
}

function Deliveries({ lot, onChoose }: { lot: Lot; onChoose: (source: Source) => void }) {
  const { units, zone } = useShop();
  const meats = lot.targets.filter(({ part }) => part === 'meat').map(({ itemId }) => itemId);
  const { data, error, refetch } = useQuery(ask(listReceipts, { left: 'some', itemId: meats.length === 1 ? meats[0] : undefined }));
  if (error && !data) return <Problem error={error} onRetry={() => void refetch()} />;
  if (!data) return <Loading />;
  const next = nextThing(lot);
  const asked = next.do === 'put in meat' ? next.target?.itemId : undefined;
  const usable = data.receipts.filter(
    ({ decision, item, leftGrams }) =>
      decision === 'accepted' && leftGrams > 0 && (meats.includes(item.itemId) || (meats.length === 0 && item.kind === 'meat')),
  );
  if (usable.length === 0) {
    return (
      <EmptyState title="No meat of this formula is left">Record the delivery under Receiving first; then it can be put in.</EmptyState>
    );
  }
  return (
    <Tiles
      label="Deliveries, oldest first"
      tiles={usable
        .toReversed()
        .sort((a, b) => Number(b.item.itemId === asked) - Number(a.item.itemId === asked))
        .map(({ receiptId, code, item, supplier, supplierLot, leftGrams, made }) => ({
          key: receiptId,
          title: `${item.name}, ${sayGrams(leftGrams, units)} left`,
          lines: [`${code} · ${dayWords(made.at, zone)}`, `${supplier.name}, lot ${supplierLot}`],
          onTap: () => onChoose({ receiptId, code, what: item.name, leftGrams }),
        }))}
    />
  );
}

function EarlierLots({ lot, onChoose }: { lot: Lot; onChoose: (source: Source) => void }) {
  const { zone } = useShop();
  const { data, error, refetch } = useQuery(ask(listLots, { standing: 'all' }));
  if (error && !data) return <Problem error={error} onRetry={() => void refetch()} />;
  if (!data) return <Loading />;
  const usable = data.lots.filter(
    ({ lotId, standing }) => lotId !== lot.lotId && standing !== 'ended' && standing !== 'condemned' && standing !== 'shipped',
  );
  if (usable.length === 0) return <EmptyState title="There is no other lot to rework" />;
  return (
    <Tiles
      label="Earlier lots"
      tiles={usable.map(({ lotId, code, productName, startedAt }) => ({
        key: lotId,
        title: `${productName}, lot ${code}`,
        lines: [dayWords(startedAt, zone)],
        onTap: () => onChoose({ lotId, code, what: `Rework of ${productName}` }),
      }))}
    />
  );
}
