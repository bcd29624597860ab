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
import { useSay } from '../../ui/voice';
import type { Supplier } from './known';
import { ReceivingFrame } from './receiving-frame';
import { SupplierDialog } from './suppliers/supplier-dialog';

type Open = { supplier?: Supplier };

export function SuppliersPage() {
  const say = useSay('items');
  const sayShared = useSay('shared');
  const { mayRecord } = useShop();
  const { data, error, refetch } = useQuery(ask(listSuppliers, {}));
  const [open, setOpen] = useState<Open>();
  const add = (
    <Button look="primary" onClick={() => setOpen({})}>
      {say('add-supplier')}
    </Button>
  );
  const columns: Column<Supplier>[] = [
    { head: say('supplier'), cell: ({ name }) => name },
    { head: say('number'), cell: ({ establishmentNumber }) => establishmentNumber || '–', oneLine: true },
    { head: say('address'), cell: ({ address }) => address || '–' },
    { head: say('contact'), cell: ({ contact }) => contact || '–' },
    ...(mayRecord
      ? [
          {
            head: sayShared('correct'),
            cell: (supplier: Supplier) => (
              <Button aria-label={say('correct-named', { name: supplier.name })} onClick={() => setOpen({ supplier })}>
                {sayShared('correct')}
              </Button>
            ),
          },
        ]
      : []),
  ];
  return (
    <ReceivingFrame title="suppliers" actions={add}>
      {data && (
        <Table
          caption={say('suppliers')}
          captionUnseen
          columns={columns}
          rows={data.suppliers}
          rowKey={({ supplierId }) => supplierId}
          empty={
            <EmptyState title={say('no-supplier')} action={mayRecord && add}>
              {say('name-suppliers')}
            </EmptyState>
          }
        />
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {open && <SupplierDialog supplier={open.supplier} onClose={() => setOpen(undefined)} />}
    </ReceivingFrame>
  );
}
