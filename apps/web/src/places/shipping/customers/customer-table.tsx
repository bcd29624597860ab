import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Table } from '../../../ui/table';
import { useSay } from '../../../ui/voice';
import type { Customer } from './customer';

type CustomerTableProps = { customers: Customer[]; onCorrect?: (customer: Customer) => void };

export function CustomerTable({ customers, onCorrect }: CustomerTableProps) {
  const say = useSay('shipping');
  const sayShared = useSay('shared');
  const correct = {
    head: sayShared('correct'),
    cell: (customer: Customer) => (
      <Button aria-label={say('correct-named', { name: customer.name })} onClick={() => onCorrect?.(customer)}>
        {sayShared('correct')}
      </Button>
    ),
  };
  return (
    <Table
      caption={say('customers')}
      captionUnseen
      rows={customers}
      rowKey={({ customerId }) => customerId}
      empty={<EmptyState title={say('no-customer')}>{say('add-first')}</EmptyState>}
      columns={[
        { head: say('name'), cell: ({ name }) => name },
        { head: say('address'), cell: ({ address }) => address || say('not-given') },
        { head: say('contact'), cell: ({ contact }) => contact || say('not-given') },
        ...(onCorrect ? [correct] : []),
      ]}
    />
  );
}
