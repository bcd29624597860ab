import { listCustomers } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { useSay } from '../../ui/voice';
import type { Customer } from './customers/customer';
import { CustomerDialog } from './customers/customer-dialog';
import { CustomerTable } from './customers/customer-table';
import { ShippingFrame } from './shipping-frame';

export function CustomersPage() {
  const say = useSay('shipping');
  const { mayRecord } = useShop();
  const { data, error, refetch } = useQuery(ask(listCustomers, {}));
  const [open, setOpen] = useState<{ customer?: Customer }>();
  return (
    <ShippingFrame
      title={say('customers')}
      under={say('recall-reaches')}
      actions={
        mayRecord && (
          <Button look="primary" onClick={() => setOpen({})}>
            {say('add-customer')}
          </Button>
        )
      }
    >
      {data && <CustomerTable customers={data.customers} onCorrect={mayRecord ? (customer) => setOpen({ customer }) : undefined} />}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {open && <CustomerDialog corrects={open.customer} onClose={() => setOpen(undefined)} />}
    </ShippingFrame>
  );
}
