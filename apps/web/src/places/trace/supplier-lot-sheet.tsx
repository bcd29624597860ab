import { printSupplierLot, traceSupplierLot, type InputOf, type SupplierLotTrace, type Trace } from '@larderbook/contracts';
import { massIn } from '@larderbook/haccp';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import { Facts } from '../../ui/facts';
import { FileButton, LinkButton } from '../../ui/link-button';
import { PaperButton } from '../../ui/paper-button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { useNameOnPaper } from '../../ui/use-name-on-paper';
import { useFigures, useSay } from '../../ui/voice';
import { DeliveriesOfLot } from './deliveries-of-lot';
import { OtherSuppliers } from './other-suppliers';
import { Reached } from './reached';

type SheetProps = { trace: SupplierLotTrace; asked: InputOf<typeof traceSupplierLot> };

export function SupplierLotSheet({ trace, asked }: SheetProps) {
  const say = useSay('trace');
  const sayShared = useSay('shared');
  const { supplierLot, deliveries } = trace;
  useNameOnPaper([...new Set(deliveries.map(({ item }) => item))].join(', '), supplierLot, say('supplier-lot-on-paper'));
  const names = [...new Set(deliveries.map(({ supplier }) => supplier))].join(', ');
  return (
    <Stack gap="wide">
      <PageHeader
        over={say('of-supplier-lot')}
        title={supplierLot}
        under={say('from-suppliers', { names })}
        actions={
          <>
            <LinkButton to="/trace">{say('another')}</LinkButton>
            <FileButton href={hrefOf(traceSupplierLot, asked)} download={`supplier-lot-${supplierLot}.json`}>
              {say('download')}
            </FileButton>
            <PaperButton href={(language) => hrefOf(printSupplierLot, { ...asked, language })}>{sayShared('print')}</PaperButton>
          </>
        }
      />
      <OtherSuppliers trace={trace} asked={asked} />
      <Facts facts={useFacts(trace)} />
      <Section title={say('every-delivery')}>
        <DeliveriesOfLot deliveries={deliveries} />
      </Section>
      <Reached trace={asOneTrace(trace)} />
    </Stack>
  );
}

function useFacts({ totals }: SupplierLotTrace) {
  const say = useSay('trace');
  const { units } = useShop();
  const figures = useFigures();
  const weight = (grams: number) => massIn(units, grams);
  const orNone = (grams: number) => (grams === 0 ? say('none') : figures.quantity(weight(grams)));
  const inDeliveries = (count: number, grams: number) =>
    count === 0 ? say('none') : say('weight-in-deliveries', { weight: weight(grams), count });
  const packages = (count: number, grams: number) =>
    count === 0 ? say('none') : say('packages-weighing', { count, weight: weight(grams) });
  const { customers, lots, usedGrams, shipped, shippedGrams } = totals;
  return [
    { name: say('received'), value: inDeliveries(totals.deliveries - totals.refused, totals.receivedGrams) },
    { name: say('refused'), value: inDeliveries(totals.refused, totals.refusedGrams) },
    {
      name: say('went-into-lots'),
      value: usedGrams === 0 ? say('none') : say('weight-in-lots', { weight: weight(usedGrams), count: lots }),
    },
    { name: say('still-as-delivered'), value: orNone(totals.leftGrams) },
    { name: say('lost-or-condemned'), value: orNone(totals.removedGrams + totals.condemnedGrams) },
    { name: say('accounted-for'), value: <AccountedFor totals={totals} /> },
    { name: say('still-in-work'), value: orNone(totals.inWorkGrams) },
    { name: say('packed'), value: packages(totals.packed, totals.packedGrams) },
    {
      name: say('shipped'),
      value: shipped === 0 ? say('none') : say('packages-to-customers', { count: shipped, weight: weight(shippedGrams), customers }),
    },
    { name: say('not-shipped'), value: packages(totals.notShipped, totals.notShippedGrams) },
  ];
}

function AccountedFor({ totals: { accountedPercent, unexplainedGrams } }: Pick<SupplierLotTrace, 'totals'>) {
  const say = useSay('trace');
  const { units } = useShop();
  const figures = useFigures();
  if (accountedPercent === '') return say('nothing-received');
  const percent = { value: accountedPercent, unit: '%' } as const;
  return unexplainedGrams === 0 ? figures.quantity(percent) : say('accounted-but', { percent, weight: massIn(units, unexplainedGrams) });
}

/** Covers only what every trace ends with. */
const asOneTrace = ({ supplierLot, forward, suppliers, customers, balance, tookMilliseconds }: SupplierLotTrace): Trace => ({
  start: { kind: 'receipt', id: '', code: supplierLot, what: '' },
  backward: { nodes: [], links: [] },
  forward,
  suppliers,
  customers,
  balance,
  tookMilliseconds,
});
