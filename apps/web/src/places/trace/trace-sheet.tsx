import { showTrace, type Trace } from '@larderbook/contracts';
import { hrefOf } from '../../api/client';
import { Button } from '../../ui/button';
import { Facts } from '../../ui/facts';
import { FileButton, LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { useNameOnPaper } from '../../ui/use-name-on-paper';
import { many } from './many';
import { Reached } from './reached';
import { SameNumber } from './same-number';
import { sumUp } from './sum-up';
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
      <Reached trace={trace} />
    </Stack>
  );
}

function factsOf(trace: Trace) {
  const { suppliers, deliveries, lots, packed, shipped, customers } = sumUp(trace);
  return [
    {
      name: 'Behind it',
      value: deliveries > 0 ? `${many(deliveries, 'delivery', 'deliveries')} of ${many(suppliers, 'supplier')}` : 'none',
    },
    { name: 'Lots', value: lots || 'none' },
    { name: 'Packed', value: many(packed, 'package') },
    { name: 'Shipped', value: shipped > 0 ? `${many(shipped, 'package')} to ${many(customers, 'customer')}` : 'none' },
    { name: 'Not shipped', value: many(packed - shipped, 'package') },
    {
      name: 'Time it took',
      value: trace.tookMilliseconds < 1000 ? `${trace.tookMilliseconds} ms` : `${(trace.tookMilliseconds / 1000).toFixed(1)} s`,
    },
  ];
}
