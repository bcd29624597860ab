import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Table } from '../../../ui/table';
import type { Customer } from './customer';

type CustomerTableProps = { customers: Customer[]; onCorrect?: (customer: Customer) => void };

export function CustomerTable({ customers, onCorrect }: CustomerTableProps) {
  const correct = {
    head: 'Correct',
    cell: (customer: Customer) => (
      <Button aria-label={`Correct ${customer.name}`} onClick={() => onCorrect?.(customer)}>
        Correct
      </Button>
    ),
  };
  return (
    <Table
      caption="Customers"
      captionUnseen
      rows={customers}
      rowKey={({ customerId }) => customerId}
      empty={<EmptyState title="No customer yet">Add the first one here, or while shipping.</EmptyState>}
      columns={[
        { head: 'Name', cell: ({ name }) => name },
        { head: 'Address', cell: ({ address }) => address || 'not given' },
        { head: 'Contact', cell: ({ contact }) => contact || 'not given' },
        ...(onCorrect ? [correct] : []),
      ]}
    />
  );
}
