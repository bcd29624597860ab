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
import { useSay } from '../../ui/voice';
import { ItemDialog } from './items/item-dialog';
import css from './items/items.module.css';
import { useItemWords } from './items/use-item-words';
import type { Item } from './known';
import { ReceivingFrame } from './receiving-frame';

type Open = { item?: Item };

export function ItemsPage() {
  const say = useSay('items');
  const sayShared = useSay('shared');
  const words = useItemWords();
  const { mayRecord } = useShop();
  const { data, error, refetch } = useQuery(ask(listItems, {}));
  const [open, setOpen] = useState<Open>();
  const add = (
    <Button look="primary" onClick={() => setOpen({})}>
      {say('add-item')}
    </Button>
  );
  const columns: Column<Item>[] = [
    {
      head: say('item'),
      cell: (item) => (
        <div>
          {item.name}
          <span className={css.small}>{words.kind(item)}</span>
        </div>
      ),
    },
    { head: say('holds'), cell: (item) => [words.substance(item), ...item.allergens.map(words.allergen)].filter(Boolean).join(', ') },
    { head: say('at-the-door'), cell: (item) => words.receiving(item), oneLine: true },
    ...(mayRecord
      ? [
          {
            head: sayShared('correct'),
            cell: (item: Item) => (
              <Button aria-label={say('correct-named', { name: item.name })} onClick={() => setOpen({ item })}>
                {sayShared('correct')}
              </Button>
            ),
          },
        ]
      : []),
  ];
  return (
    <ReceivingFrame title="items" actions={add}>
      {data && (
        <Table
          caption={say('items')}
          captionUnseen
          columns={columns}
          rows={data.items}
          rowKey={({ itemId }) => itemId}
          empty={
            <EmptyState title={say('no-item')} action={mayRecord && add}>
              {say('begin-with')}
            </EmptyState>
          }
        />
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {open && <ItemDialog item={open.item} onClose={() => setOpen(undefined)} />}
    </ReceivingFrame>
  );
}
