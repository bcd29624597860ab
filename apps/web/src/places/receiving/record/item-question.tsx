import type { Receipt } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Question } from '../../../ui/question';
import { Tiles } from '../../../ui/tiles';
import { ItemDialog } from '../items/item-dialog';
import { sayKind, sayReceiving, saySubstance } from '../items/say-item';
import type { Item } from '../known';
import { itemsByHabit } from './by-habit';

type ItemQuestionProps = { items: Item[]; receipts: Receipt[]; onItem: (item: Item) => void };

/** What was delivered: one tap, what came last first. */
export function ItemQuestion({ items, receipts, onItem }: ItemQuestionProps) {
  const { degrees } = useShop();
  const [isAdding, setIsAdding] = useState(false);
  const add = <Button onClick={() => setIsAdding(true)}>Add an item</Button>;
  return (
    <Question title="What was delivered?">
      {items.length === 0 ? (
        <EmptyState title="No item yet" action={add}>
          Name what comes in at the door once: a raw material, an ingredient, packaging. After that it is one tap.
        </EmptyState>
      ) : (
        <Tiles
          label="Items"
          tiles={itemsByHabit(items, receipts).map((item) => ({
            key: item.itemId,
            title: item.name,
            lines: [[sayKind(item), saySubstance(item), sayReceiving(item, degrees)].filter(Boolean).join(' · ')],
            onTap: () => onItem(item),
          }))}
        />
      )}
      {items.length > 0 && <div>{add}</div>}
      {isAdding && <ItemDialog onSaved={onItem} onClose={() => setIsAdding(false)} />}
    </Question>
  );
}
