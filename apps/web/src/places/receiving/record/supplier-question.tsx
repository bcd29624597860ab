import type { Receipt } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Question } from '../../../ui/question';
import { Tiles } from '../../../ui/tiles';
import { useSay } from '../../../ui/voice';
import type { Item, Supplier } from '../known';
import { SupplierDialog } from '../suppliers/supplier-dialog';
import { suppliersByHabit } from './by-habit';

type SupplierQuestionProps = { suppliers: Supplier[]; item: Item; receipts: Receipt[]; onSupplier: (supplier: Supplier) => void };

/** Who brought this item last comes first; a new supplier can be added without a signal. */
export function SupplierQuestion({ suppliers, item, receipts, onSupplier }: SupplierQuestionProps) {
  const say = useSay('receiving');
  const sayItems = useSay('items');
  const [isAdding, setIsAdding] = useState(false);
  const add = <Button onClick={() => setIsAdding(true)}>{sayItems('add-supplier')}</Button>;
  return (
    <Question title={say('who-brought')}>
      {suppliers.length === 0 ? (
        <EmptyState title={sayItems('no-supplier')} action={add}>
          {say('supplier-once')}
        </EmptyState>
      ) : (
        <Tiles
          label={say('suppliers')}
          tiles={suppliersByHabit(suppliers, item.itemId, receipts).map(({ supplier, lastBrought }) => ({
            key: supplier.supplierId,
            title: supplier.name,
            onTap: () => onSupplier(supplier),
            lines: [supplier.establishmentNumber, lastBrought && say('brought-on', { day: { at: lastBrought.made.at, show: 'day' } })],
          }))}
        />
      )}
      {suppliers.length > 0 && <div>{add}</div>}
      {isAdding && <SupplierDialog onSaved={onSupplier} onClose={() => setIsAdding(false)} />}
    </Question>
  );
}
