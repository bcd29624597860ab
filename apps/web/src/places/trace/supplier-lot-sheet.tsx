import { printSupplierLot, traceSupplierLot, type InputOf, type SupplierLotTrace, type Trace } from '@larderbook/contracts';
import { hrefOf } from '../../api/client';
import { sayGrams } from '../../api/say-grams';
import { useShop, type Shop } from '../../api/use-shop';
import { Facts } from '../../ui/facts';
import { FileButton, LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { useNameOnPaper } from '../../ui/use-name-on-paper';
import { DeliveriesOfLot } from './deliveries-of-lot';
import { OtherSuppliers } from './other-suppliers';
import { many } from './many';
import { Reached } from './reached';

type SheetProps = { trace: SupplierLotTrace; asked: InputOf<typeof traceSupplierLot> };

/** A supplier's lot on one sheet: what came of the number in all, each delivery, then whom to call and the weights. */
export function SupplierLotSheet({ trace, asked }: SheetProps) {
  const { units } = useShop();
  const { supplierLot, deliveries } = trace;
  useNameOnPaper([...new Set(deliveries.map(({ item }) => item))].join(', '), supplierLot, 'supplier lot');
  const names = [...new Set(deliveries.map(({ supplier }) => supplier))].join(', ');
  return (
    <Stack gap="wide">
      <PageHeader
        over="Trace of a supplier’s lot"
        title={supplierLot}
        under={`from ${names}`}
        actions={
          <>
            <LinkButton to="/trace">Trace another</LinkButton>
            <FileButton href={hrefOf(traceSupplierLot, asked)} download={`supplier-lot-${supplierLot}.json`}>
              Download as JSON
            </FileButton>
            <FileButton href={hrefOf(printSupplierLot, { ...asked })}>Print</FileButton>
          </>
        }
      />
      <OtherSuppliers trace={trace} asked={asked} />
      <Facts facts={factsOf(trace, units)} />
      <Section title="Every delivery of this number">
        <DeliveriesOfLot deliveries={deliveries} />
      </Section>
      <Reached trace={asOneTrace(trace)} />
    </Stack>
  );
}

function factsOf({ totals }: SupplierLotTrace, units: Shop['units']) {
  const weight = (grams: number) => sayGrams(grams, units);
  const withWeight = (count: number, grams: number) => (count === 0 ? 'none' : `${many(count, 'package')}, ${weight(grams)}`);
  const accepted = totals.deliveries - totals.refused;
  return [
    { name: 'Received', value: accepted === 0 ? 'none' : `${weight(totals.receivedGrams)} in ${many(accepted, 'delivery', 'deliveries')}` },
    {
      name: 'Refused',
      value: totals.refused === 0 ? 'none' : `${weight(totals.refusedGrams)} in ${many(totals.refused, 'delivery', 'deliveries')}`,
    },
    { name: 'Went into lots', value: totals.usedGrams === 0 ? 'none' : `${weight(totals.usedGrams)}, now in ${many(totals.lots, 'lot')}` },
    { name: 'Still as delivered', value: totals.leftGrams === 0 ? 'none' : weight(totals.leftGrams) },
    {
      name: 'Lost, taken out, condemned',
      value: totals.removedGrams + totals.condemnedGrams === 0 ? 'none' : weight(totals.removedGrams + totals.condemnedGrams),
    },
    { name: 'Accounted for', value: accountedFor(totals, weight) },
    { name: 'Still in work', value: totals.inWorkGrams === 0 ? 'none' : weight(totals.inWorkGrams) },
    { name: 'Packed', value: withWeight(totals.packed, totals.packedGrams) },
    {
      name: 'Shipped',
      value: totals.shipped === 0 ? 'none' : `${withWeight(totals.shipped, totals.shippedGrams)}, to ${many(totals.customers, 'customer')}`,
    },
    { name: 'Not shipped', value: withWeight(totals.notShipped, totals.notShippedGrams) },
  ];
}

function accountedFor({ accountedPercent, unexplainedGrams }: SupplierLotTrace['totals'], weight: (grams: number) => string): string {
  if (accountedPercent === '') return 'nothing was received';
  return unexplainedGrams === 0 ? `${accountedPercent} %` : `${accountedPercent} %; ${weight(unexplainedGrams)} no record explains`;
}

/** The same as a trace from one place, for what every trace ends with. */
const asOneTrace = ({ supplierLot, forward, suppliers, customers, balance, tookMilliseconds }: SupplierLotTrace): Trace => ({
  start: { kind: 'receipt', id: '', code: supplierLot, what: '' },
  backward: { nodes: [], links: [] },
  forward,
  suppliers,
  customers,
  balance,
  tookMilliseconds,
});
