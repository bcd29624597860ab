import { listSuppliers } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { Table, type Column } from '../../ui/table';
import type { Supplier } from './known';
import { ReceivingFrame } from './receiving-frame';
import { SupplierDialog } from './suppliers/supplier-dialog';

type Doing = { supplier?: Supplier };

/** Who brings it, and whom to call. */
export function SuppliersPage() {
  const { mayRecord } = useShop();
  const { data, error, refetch } = useQuery(ask(listSuppliers, {}));
  const [doing, setDoing] = useState<Doing>();
  const add = (
    <Button look="primary" onClick={() => setDoing({})}>
      Add a supplier
    </Button>
  );
  const columns: Column<Supplier>[] = [
    { head: 'Supplier', cell: ({ name }) => name },
    { head: 'Number', cell: ({ establishmentNumber }) => establishmentNumber || '–', oneLine: true },
    { head: 'Address', cell: ({ address }) => address || '–' },
    { head: 'Contact', cell: ({ contact }) => contact || '–' },
    ...(mayRecord
      ? [
          {
            head: 'Correct',
            cell: (supplier: Supplier) => (
              <Button aria-label={`Correct ${supplier.name}`} onClick={() => setDoing({ supplier })}>
                Correct
              </Button>
            ),
          },
        ]
      : []),
  ];
  return (
    <ReceivingFrame title="Suppliers" actions={add}>
      {data && (
        <Table
          caption="Suppliers"
          captionUnseen
          columns={columns}
          rows={data.suppliers}
          rowKey={({ supplierId }) => supplierId}
          empty={
            <EmptyState title="No supplier yet" action={mayRecord && add}>
              Name those who bring meat and ingredients; a delivery then needs one tap for it.
            </EmptyState>
          }
        />
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {doing && <SupplierDialog supplier={doing.supplier} onClose={() => setDoing(undefined)} />}
    </ReceivingFrame>
  );
}
