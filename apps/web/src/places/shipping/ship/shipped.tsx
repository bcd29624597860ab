import type { recordShipment } from '@larderbook/contracts';
import type { Saved } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { LinkButton } from '../../../ui/link-button';
import { Question } from '../../../ui/question';
import { Row, Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import type { Customer } from '../customers/customer';
import type { LoadLine } from './load';
import { LoadList } from './load-list';

type ShippedProps = {
  saved: Saved<typeof recordShipment>;
  customer: Customer;
  load: LoadLine[];
  onAnother: () => void;
};

/** Only the server knows that the lots are still cleared: until it answers, the goods wait too. */
export function Shipped({ saved, customer, load, onAnother }: ShippedProps) {
  const say = useSay('shipping');
  const isSent = saved.state === 'sent';
  return (
    <Question
      title={
        isSent ? say('is-recorded', { number: String(saved.reply.number), name: customer.name }) : say('kept-here', { name: customer.name })
      }
      hint={isSent ? undefined : say('hold-goods')}
    >
      <Stack>
        <LoadList load={load} />
        <Row>
          <Button look="primary" onClick={onAnother}>
            {say('another-shipment')}
          </Button>
          <LinkButton to="/shipping/shipments">{say('shipments')}</LinkButton>
        </Row>
      </Stack>
    </Question>
  );
}
