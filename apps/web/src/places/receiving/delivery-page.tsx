import { showReceipt, type Receipt } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { useOutbox } from '../../outbox/use-outbox';
import { Button } from '../../ui/button';
import { CorrectedList } from '../../ui/corrected-list';
import { EmptyState } from '../../ui/empty-state';
import { Facts } from '../../ui/facts';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { BothMoments, Moment } from '../../ui/moment';
import { PageHeader } from '../../ui/page-header';
import { PageProblem } from '../../ui/page-problem';
import { Section } from '../../ui/section';
import { Row, Stack } from '../../ui/stack';
import { useClock, useFigures, useSay } from '../../ui/voice';
import { CorrectDelivery } from './deliveries/correct-delivery';
import { VoidDelivery } from './deliveries/void-delivery';
import { DeliveryStatus } from './deliveries/delivery-status';
import { leftOf } from './deliveries/left-of';
import { useTell } from '../../ui/use-tell';

const route = getRouteApi('/receiving/$receiptId');

export function DeliveryPage() {
  const say = useSay('receiving');
  const { receiptId } = route.useParams();
  const { data, error, refetch } = useQuery(ask(showReceipt, { receiptId }));
  const { waiting } = useOutbox();
  if (data) return <Delivery receipt={data} />;
  if (waiting.some(({ id }) => id === receiptId)) {
    return <EmptyState title={say('kept-title')}>{say('opens-when-sent')}</EmptyState>;
  }
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}

function Delivery({ receipt }: { receipt: Receipt }) {
  const say = useSay('receiving');
  const sayEntry = useSay('entries');
  const sayShared = useSay('shared');
  const { tell } = useTell();
  const verdict = receipt.verdict && tell(receipt.verdict, receipt.limit);
  const { flags, deviationId, reason, decision, corrections, voided } = receipt;
  const { zone, mayRecord } = useShop();
  const [open, setOpen] = useState<'correct' | 'void'>();
  const close = () => setOpen(undefined);
  return (
    <Stack>
      <PageHeader
        title={receipt.item.name}
        over={say('delivery-of', { code: receipt.code })}
        under={<DeliveryStatus receipt={receipt} size="large" />}
      />
      <DeliveryFacts receipt={receipt} />
      {verdict && <p>{say('limit-at-receipt', { because: verdict.because, limit: verdict.limit, source: verdict.source.citation })}</p>}
      {reason && <p>{say(`${decision}-because`, { reason })}</p>}
      {flags.map((flag) => (
        <p key={flag}>{say('remark', { remark: sayEntry(flag) })}</p>
      ))}
      {corrections.length > 0 && (
        <Section title={say('corrections')}>
          <CorrectedList corrections={corrections} zone={zone} />
        </Section>
      )}
      <Row>
        {mayRecord && !voided && <Button onClick={() => setOpen('correct')}>{sayShared('correct')}</Button>}
        {mayRecord && !voided && <Button onClick={() => setOpen('void')}>{sayShared('void')}</Button>}
        {deviationId && (
          <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId }}>
            {say('open-deviation')}
          </LinkButton>
        )}
        <LinkButton to="/trace/$nodeId" params={{ nodeId: receipt.receiptId }}>
          {say('trace')}
        </LinkButton>
        <LinkButton to="/receiving">{say('all-deliveries')}</LinkButton>
      </Row>
      {open === 'correct' && <CorrectDelivery receipt={receipt} onClose={close} />}
      {open === 'void' && <VoidDelivery receipt={receipt} onClose={close} />}
    </Stack>
  );
}

function DeliveryFacts({ receipt }: { receipt: Receipt }) {
  const say = useSay('receiving');
  const sayLimits = useSay('limits');
  const { number, quantity } = useFigures();
  const { zone } = useShop();
  const clock = useClock(zone);
  const {
    supplier,
    supplierLot,
    supplierEstablishmentNumber,
    killDate,
    packDate,
    weight,
    temperature,
    fractionPercent,
    item,
    made,
    corrections,
  } = receipt;
  const last = corrections.at(-1);
  return (
    <Facts
      facts={[
        { name: say('supplier'), value: supplier.name },
        { name: say('supplier-lot'), value: supplierLot },
        ...(supplierEstablishmentNumber ? [{ name: say('their-number'), value: supplierEstablishmentNumber }] : []),
        ...(killDate ? [{ name: say('killed'), value: clock.calendarDay(killDate) }] : []),
        ...(packDate ? [{ name: say('packed'), value: clock.calendarDay(packDate) }] : []),
        { name: say('weight'), value: quantity(weight) },
        { name: say('left-of-it'), value: leftOf(receipt, say) ?? say('none-came-in') },
        ...(temperature ? [{ name: say('temperature'), value: quantity(temperature) }] : []),
        ...(fractionPercent === undefined
          ? []
          : [
              {
                name: item.substance ? sayLimits(codeOf('substance', item.substance)) : say('restricted-substance'),
                value: `${number(fractionPercent)} %`,
              },
            ]),
        { name: say('received'), value: <BothMoments at={made.at} recordedAt={made.recordedAt} zone={zone} /> },
        { name: say('by'), value: made.name },
        ...(last
          ? [
              {
                name: say(last.voided ? 'voided' : 'corrected'),
                value: (
                  <>
                    {last.made.name}, <Moment at={last.made.recordedAt} zone={zone} />
                  </>
                ),
              },
            ]
          : []),
      ]}
    />
  );
}
