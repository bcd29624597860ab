import { listCustomers } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { Button } from '../../../ui/button';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Question } from '../../../ui/question';
import { Tiles } from '../../../ui/tiles';
import { useSay } from '../../../ui/voice';
import type { Customer } from '../customers/customer';
import { CustomerDialog } from '../customers/customer-dialog';

export function ChooseCustomer({ onChoose }: { onChoose: (customer: Customer) => void }) {
  const say = useSay('shipping');
  const { data, error, refetch } = useQuery(ask(listCustomers, {}));
  const [isAdding, setAdding] = useState(false);
  return (
    <Question title={say('who-gets')}>
      {data && (
        <Tiles
          label={say('customers')}
          tiles={data.customers.map((customer) => ({
            key: customer.customerId,
            title: customer.name,
            lines: [customer.address],
            onTap: () => onChoose(customer),
          }))}
        />
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      <Button onClick={() => setAdding(true)}>{say('new-customer')}</Button>
      {isAdding && <CustomerDialog onRecorded={onChoose} onClose={() => setAdding(false)} />}
    </Question>
  );
}
