import { listLots, listReceipts, type Lot } from '@larderbook/contracts';
import { massIn } from '@larderbook/haccp';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { Tiles } from '../../../ui/tiles';
import { useClock, useSay } from '../../../ui/voice';
import { nextThing } from '../next/next-thing';

/** A delivery, or an earlier lot as rework. */
export type Source = { receiptId?: string; lotId?: string; code: string; what: string; leftGrams?: number };

/** Deliveries of the meat that is put in next come first, then the oldest. */
export function SourceChoice({ lot, onChoose }: { lot: Lot; onChoose: (source: Source) => void }) {
  const say = useSay('lot-forms');
  const [isRework, setIsRework] = useState(false);
  return (
    <Stack gap="near">
      {isRework ? <EarlierLots lot={lot} onChoose={onChoose} /> : <Deliveries lot={lot} onChoose={onChoose} />}
      <div>
        <Button look="quiet" onClick={() => setIsRework(!isRework)}>
          {say(isRework ? 'from-delivery' : 'rework-earlier')}
        </Button>
      </div>
    </Stack>
  );
}

function Deliveries({ lot, onChoose }: { lot: Lot; onChoose: (source: Source) => void }) {
  const say = useSay('lot-forms');
  const clock = useClock();
  const { units } = useShop();
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
    return <EmptyState title={say('no-meat-left')}>{say('record-delivery-first')}</EmptyState>;
  }
  return (
    <Tiles
      label={say('deliveries-oldest')}
      tiles={usable
        .toReversed()
        .sort((a, b) => Number(b.item.itemId === asked) - Number(a.item.itemId === asked))
        .map(({ receiptId, code, item, supplier, supplierLot, leftGrams, made }) => ({
          key: receiptId,
          title: say('item-left', { item: item.name, weight: massIn(units, leftGrams) }),
          lines: [`${code} · ${clock.day(Date.parse(made.at))}`, say('supplier-lot', { supplier: supplier.name, lot: supplierLot })],
          onTap: () => onChoose({ receiptId, code, what: item.name, leftGrams }),
        }))}
    />
  );
}

function EarlierLots({ lot, onChoose }: { lot: Lot; onChoose: (source: Source) => void }) {
  const say = useSay('lot-forms');
  const clock = useClock();
  const { data, error, refetch } = useQuery(ask(listLots, { standing: 'all' }));
  if (error && !data) return <Problem error={error} onRetry={() => void refetch()} />;
  if (!data) return <Loading />;
  const usable = data.lots.filter(
    ({ lotId, standing }) => lotId !== lot.lotId && standing !== 'ended' && standing !== 'condemned' && standing !== 'shipped',
  );
  if (usable.length === 0) return <EmptyState title={say('no-other-lot')} />;
  return (
    <Tiles
      label={say('earlier-lots')}
      tiles={usable.map(({ lotId, code, productName, startedAt }) => ({
        key: lotId,
        title: say('product-lot', { product: productName, lot: code }),
        lines: [clock.day(Date.parse(startedAt))],
        onTap: () => onChoose({ lotId, code, what: say('rework-of', { product: productName }) }),
      }))}
    />
  );
}
