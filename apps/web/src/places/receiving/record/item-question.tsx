import type { Receipt } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Question } from '../../../ui/question';
import { Tiles } from '../../../ui/tiles';
import { useSay } from '../../../ui/voice';
import { ItemDialog } from '../items/item-dialog';
import { useItemWords } from '../items/use-item-words';
import type { Item } from '../known';
import { itemsByHabit } from './by-habit';

type ItemQuestionProps = { items: Item[]; receipts: Receipt[]; onItem: (item: Item) => void };

/** What came last stands first. */
export function ItemQuestion({ items, receipts, onItem }: ItemQuestionProps) {
  const say = useSay('receiving');
  const sayItems = useSay('items');
  const words = useItemWords();
  const [isAdding, setIsAdding] = useState(false);
  const add = <Button onClick={() => setIsAdding(true)}>{sayItems('add-item')}</Button>;
  return (
    <Question title={say('what-delivered')}>
      {items.length === 0 ? (
        <EmptyState title={sayItems('no-item')} action={add}>
          {say('name-once')}
        </EmptyState>
      ) : (
        <Tiles
          label={say('items')}
          tiles={itemsByHabit(items, receipts).map((item) => ({
            key: item.itemId,
            title: item.name,
            lines: [[words.kind(item), words.substance(item), words.receiving(item)].filter(Boolean).join(' · ')],
            onTap: () => onItem(item),
          }))}
        />
      )}
      {items.length > 0 && <div>{add}</div>}
      {isAdding && <ItemDialog onSaved={onItem} onClose={() => setIsAdding(false)} />}
    </Question>
  );
}
