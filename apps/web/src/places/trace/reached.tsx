import type { Trace } from '@larderbook/contracts';
import { Caution } from '../../ui/caution';
import { Section } from '../../ui/section';
import { BalanceTable } from './balance-table';
import { CustomersReached } from './customers-reached';
import { LinkTable } from './link-table';
import { SuppliersBehind } from './suppliers-behind';

/** What every trace ends with: whom to call, the weights that prove that nothing is forgotten, and each step. */
export function Reached({ trace }: { trace: Trace }) {
  return (
    <>
      <Section title="Customers to call">
        <CustomersReached customers={trace.customers} />
      </Section>
      <Section title="Suppliers behind it">
        <SuppliersBehind suppliers={trace.suppliers} />
      </Section>
      <Section title="Mass balance">
        <BalanceTable balance={trace.balance} />
      </Section>
      <Section title="Every step">
        <LinkTable trace={trace} />
      </Section>
      <Caution>
        Whether to recall, and how far, is decided with your inspector and the authority; call them first. A package that cannot be told
        apart from those reached belongs to them.
      </Caution>
    </>
  );
}
