import { showTrace, type Trace } from '@larderbook/contracts';
import { hrefOf } from '../../api/client';
import { Button } from '../../ui/button';
import { Caution } from '../../ui/caution';
import { Facts } from '../../ui/facts';
import { FileButton, LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { useNameOnPaper } from '../../ui/use-name-on-paper';
import { BalanceTable } from './balance-table';
import { CustomersReached } from './customers-reached';
import { LinkTable } from './link-table';
import { many } from './many';
import { SameNumber } from './same-number';
import { sumUp } from './sum-up';
import { SuppliersBehind } from './suppliers-behind';
import { TraceDrawing } from './drawing/trace-drawing';

const kindWords: Record<Trace['start']['kind'], string> = {
  receipt: 'a delivery',
  lot: 'a lot',
  packing: 'packages',
  customer: 'a customer',
};

/** A trace on one sheet: drawn, then whom to call, then the weights that prove that nothing is forgotten. */
export function TraceSheet({ trace, nodeId }: { trace: Trace; nodeId: string }) {
  const { start } = trace;
  useNameOnPaper(start.what, start.code, 'trace');
  return (
    <Stack gap="wide">
      <PageHeader
        over={`Trace of ${kindWords[start.kind]}`}
        title={start.code}
        under={start.what}
        actions={
          <>
            <LinkButton to="/trace">Trace another</LinkButton>
            <FileButton href={hrefOf(showTrace, { nodeId })} download={`trace-${start.code}.json`}>
              Download as JSON
            </FileButton>
            <Button onClick={() => window.print()}>Print</Button>
          </>
        }
      />
      {start.kind === 'receipt' && <SameNumber trace={trace} />}
      <Facts facts={factsOf(trace)} />
      <TraceDrawing trace={trace} />
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
        Whether to recall, and how far, is decided with your inspector and the authority; call them first. A package
        that cannot be told apart from those reached belongs to them.
      </Caution>
    </Stack>
  );
}

function factsOf(trace: Trace) {
  const { suppliers, deliveries, lots, packed, shipped, customers } = sumUp(trace);
  return [
    {
      name: 'Behind it',
      value:
        deliveries > 0 ? `${many(deliveries, 'delivery', 'deliveries')} of ${many(suppliers, 'supplier')}` : 'none',
    },
    { name: 'Lots', value: lots || 'none' },
    { name: 'Packed', value: many(packed, 'package') },
    { name: 'Shipped', value: shipped > 0 ? `${many(shipped, 'package')} to ${many(customers, 'customer')}` : 'none' },
    { name: 'Not shipped', value: many(packed - shipped, 'package') },
    {
      name: 'Time it took',
      value:
        trace.tookMilliseconds < 1000
          ? `${trace.tookMilliseconds} ms`
          : `${(trace.tookMilliseconds / 1000).toFixed(1)} s`,
    },
  ];
}
