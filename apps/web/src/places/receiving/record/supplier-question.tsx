import type { Receipt } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { dayWords } from '../../../ui/moment';
import { Question } from '../../../ui/question';
import { Tiles } from '../../../ui/tiles';
import type { Item, Supplier } from '../known';
import { SupplierDialog } from '../suppliers/supplier-dialog';
import { suppliersByHabit } from './by-habit';

type SupplierQuestionProps = { suppliers: Supplier[]; item: Item; receipts: Receipt[]; onSupplier: (supplier: Supplier) => void };

/** Who brought it: one tap, who brought this item last first; a new one is added here, with or without a signal. */
export function SupplierQuestion({ suppliers, item, receipts, onSupplier }: SupplierQuestionProps) {
  const { zone } = useShop();
  const [isAdding, setIsAdding] = useState(false);
  const add = <Button onClick={() => setIsAdding(true)}>Add a supplier</Button>;
  return (
    <Question title="Who brought it?">
      {suppliers.length === 0 ? (
        <EmptyState title="No supplier yet" action={add}>
          A supplier is named once; its establishment number then stands on every delivery.
        </EmptyState>
      ) : (
        <Tiles
          label="Suppliers"
          tiles={suppliersByHabit(suppliers, item.itemId, receipts).map(({ supplier, lastBrought }) => ({
            key: supplier.supplierId,
            title: supplier.name,
            onTap: () => onSupplier(supplier),
            lines: [supplier.establishmentNumber, lastBrought && `brought this on ${dayWords(lastBrought.made.at, zone)}`],
          }))}
        />
      )}
      {suppliers.length > 0 && <div>{add}</div>}
      {isAdding && <SupplierDialog onSaved={onSupplier} onClose={() => setIsAdding(false)} />}
    </Question>
  );
}
