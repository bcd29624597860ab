import type { recordShipment } from '@larderbook/contracts';
import type { Saved } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { LinkButton } from '../../../ui/link-button';
import { Question } from '../../../ui/question';
import { Row, Stack } from '../../../ui/stack';
import type { Customer } from '../customers/customer';
import type { LoadLine } from './load';
import { LoadList } from './load-list';

type ShippedProps = {
  saved: Saved<typeof recordShipment>;
  customer: Customer;
  load: LoadLine[];
  onAnother: () => void;
};

/** What became of it. Without the record book nobody knows that the lots are still cleared, so the goods wait too. */
export function Shipped({ saved, customer, load, onAnother }: ShippedProps) {
  const isSent = saved.state === 'sent';
  return (
    <Question
      title={
        isSent ? `Shipment ${saved.reply.number} to ${customer.name} is recorded` : `Kept on this device: the shipment to ${customer.name}`
      }
      hint={isSent ? undefined : 'Hold the goods until it has been sent: only the record book knows whether these lots are still cleared.'}
    >
      <Stack>
        <LoadList load={load} />
        <Row>
          <Button look="primary" onClick={onAnother}>
            Another shipment
          </Button>
          <LinkButton to="/shipping/shipments">Shipments</LinkButton>
        </Row>
      </Stack>
    </Question>
  );
}
