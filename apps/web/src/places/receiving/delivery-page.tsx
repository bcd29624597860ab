import { flagWords, showReceipt, type Receipt } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
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
import { BothMoments, dateWords, Moment } from '../../ui/moment';
import { PageHeader } from '../../ui/page-header';
import { PageProblem } from '../../ui/page-problem';
import { Section } from '../../ui/section';
import { Row, Stack } from '../../ui/stack';
import { CorrectDelivery } from './deliveries/correct-delivery';
import { VoidDelivery } from './deliveries/void-delivery';
import { DeliveryStatus } from './deliveries/delivery-status';
import { sayEntered, sayLeft } from './deliveries/say-receipt';

/** One delivery: everything that was written down at the door, how it was judged, and what is left. */
export function DeliveryPage() {
  const { receiptId = '' } = useParams({ strict: false });
  const { data, error, refetch } = useQuery(ask(showReceipt, { receiptId }));
  const { waiting } = useOutbox();
  if (data) return <Delivery receipt={data} />;
  if (waiting.some(({ id }) => id === receiptId)) {
    return (
      <EmptyState title="This delivery is kept on this device">
        It opens here as soon as it has been sent, which happens by itself when the connection is back.
      </EmptyState>
    );
  }
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}

function Delivery({ receipt }: { receipt: Receipt }) {
  const { verdict, flags, deviationId, reason, decision, corrections, voided } = receipt;
  const { zone, mayRecord } = useShop();
  const [doing, setDoing] = useState<'correct' | 'void'>();
  const close = () => setDoing(undefined);
  return (
    <Stack>
      <PageHeader title={receipt.item.name} over={`Delivery ${receipt.code}`} under={<DeliveryStatus receipt={receipt} size="large" />} />
      <DeliveryFacts receipt={receipt} />
      {verdict && (
        <p>
          {verdict.because} The limit at receipt is {verdict.limit}: {verdict.source.citation}.
        </p>
      )}
      {reason && (
        <p>
          <strong>{decision === 'refused' ? 'Refused because:' : 'Accepted because:'}</strong> {reason}
        </p>
      )}
      {flags.map((flag) => (
        <p key={flag}>Remark: {flagWords[flag]}.</p>
      ))}
      {corrections.length > 0 && (
        <Section title="Corrections">
          <CorrectedList corrections={corrections} zone={zone} />
        </Section>
      )}
      <Row>
        {mayRecord && !voided && <Button onClick={() => setDoing('correct')}>Correct</Button>}
        {mayRecord && !voided && <Button onClick={() => setDoing('void')}>Void</Button>}
        {deviationId && (
          <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId }}>
            Open its deviation
          </LinkButton>
        )}
        <LinkButton to="/trace/$nodeId" params={{ nodeId: receipt.receiptId }}>
          Trace this delivery
        </LinkButton>
        <LinkButton to="/receiving">All deliveries</LinkButton>
      </Row>
      {doing === 'correct' && <CorrectDelivery receipt={receipt} onClose={close} />}
      {doing === 'void' && <VoidDelivery receipt={receipt} onClose={close} />}
    </Stack>
  );
}

function DeliveryFacts({ receipt }: { receipt: Receipt }) {
  const { zone } = useShop();
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
        { name: 'Supplier', value: supplier.name },
        { name: 'Supplier’s lot', value: supplierLot },
        ...(supplierEstablishmentNumber ? [{ name: 'Their number', value: supplierEstablishmentNumber }] : []),
        ...(killDate ? [{ name: 'Killed', value: dateWords(killDate) }] : []),
        ...(packDate ? [{ name: 'Packed', value: dateWords(packDate) }] : []),
        { name: 'Weight', value: sayEntered(weight) },
        { name: 'Left of it', value: sayLeft(receipt) ?? 'refused, none came in' },
        ...(temperature ? [{ name: 'Temperature', value: sayEntered(temperature) }] : []),
        ...(fractionPercent === undefined ? [] : [{ name: item.substance ?? 'Restricted substance', value: `${fractionPercent} %` }]),
        { name: 'Received', value: <BothMoments at={made.at} recordedAt={made.recordedAt} zone={zone} /> },
        { name: 'By', value: made.name },
        ...(last
          ? [
              {
                name: last.voided ? 'Voided' : 'Corrected',
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
