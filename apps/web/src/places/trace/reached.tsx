import type { Trace } from '@larderbook/contracts';
import { Caution } from '../../ui/caution';
import { Section } from '../../ui/section';
import { useSay } from '../../ui/voice';
import { BalanceTable } from './balance-table';
import { CustomersReached } from './customers-reached';
import { LinkTable } from './link-table';
import { SuppliersBehind } from './suppliers-behind';

export function Reached({ trace }: { trace: Trace }) {
  const say = useSay('trace');
  return (
    <>
      <Section title={say('customers-to-call')}>
        <CustomersReached customers={trace.customers} />
      </Section>
      <Section title={say('suppliers-behind')}>
        <SuppliersBehind suppliers={trace.suppliers} />
      </Section>
      <Section title={say('mass-balance')}>
        <BalanceTable balance={trace.balance} />
      </Section>
      <Section title={say('every-step')}>
        <LinkTable trace={trace} />
      </Section>
      <Caution>{say('who-decides')}</Caution>
    </>
  );
}
