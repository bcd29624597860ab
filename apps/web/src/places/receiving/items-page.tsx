import { listItems } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { Table, type Column } from '../../ui/table';
import { ItemDialog } from './items/item-dialog';
import css from './items/items.module.css';
import { sayKind, sayReceiving, saySubstance } from './items/say-item';
import type { Item } from './known';
import { ReceivingFrame } from './receiving-frame';

type Doing = { item?: Item };

/** What comes in at the door: meat, ingredients, packaging, each with what it contains and how it is received. */
export function ItemsPage() {
  const { mayRecord, degrees } = useShop();
  const { data, error, refetch } = useQuery(ask(listItems, {}));
  const [doing, setDoing] = useState<Doing>();
  const add = (
    <Button look="primary" onClick={() => setDoing({})}>
      Add an item
    </Button>
  );
  const columns: Column<Item>[] = [
    {
      head: 'Item',
      cell: (item) => (
        <div>
          {item.name}
          <span className={css.small}>{sayKind(item)}</span>
        </div>
      ),
    },
    { head: 'Holds', cell: (item) => [saySubstance(item), ...item.allergens].filter(Boolean).join(', ') },
    { head: 'At the door', cell: (item) => sayReceiving(item, degrees), oneLine: true },
    ...(mayRecord
      ? [
          {
            head: 'Correct',
            cell: (item: Item) => (
              <Button aria-label={`Correct ${item.name}`} onClick={() => setDoing({ item })}>
                Correct
              </Button>
            ),
          },
        ]
      : []),
  ];
  return (
    <ReceivingFrame title="Items" actions={add}>
      {data && (
        <Table
          caption="Items"
          captionUnseen
          columns={columns}
          rows={data.items}
          rowKey={({ itemId }) => itemId}
          empty={
            <EmptyState title="No item yet" action={mayRecord && add}>
              Begin with the meat you buy most and the curing salt you use: formulas and deliveries are made of items.
            </EmptyState>
          }
        />
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {doing && <ItemDialog item={doing.item} onClose={() => setDoing(undefined)} />}
    </ReceivingFrame>
  );
}
