import type { recordShipment } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import type { Recording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Question } from '../../../ui/question';
import { Columns, Row, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import type { Customer } from '../customers/customer';
import { lineProblems, loadCount, type LoadLine } from './load';
import { LoadList } from './load-list';

type SendOffProps = { customer: Customer; load: LoadLine[]; recording: Recording<typeof recordShipment>; onBack: () => void };

/** The whole shipment before it is recorded: the load, the document that goes with it, and what stood in the way. */
export function SendOff({ customer, load, recording, onBack }: SendOffProps) {
  const { zone } = useShop();
  const [document, setDocument] = useState('');
  const [leftAt, setLeftAt] = useState('');
  const { id, busy, refused, save } = recording;
  const problems = lineProblems(load, refused?.fields ?? {});

  const ship = () => {
    const lines = load.map(({ packing, count }) => ({ packingId: packing.packingId, count }));
    const takenAt = leftAt || new Date().toISOString();
    void save({ shipmentId: id, customerId: customer.customerId, document: document.trim(), lines, takenAt }, `Shipment of ${loadCount(load)} packages to ${customer.name}`);
  };
  return (
    <Question title={`Ship to ${customer.name}`} hint={customer.address}>
      <Form errors={refused?.fields ?? {}} busy={busy} onSubmit={ship}>
        <Stack>
          <LoadList load={load} problems={problems} />
          <Columns>
            <TextField
              label="Document number" optional hint="Of the delivery note or the invoice that goes with it." maxLength={80} autoComplete="off"
              value={document} onChange={setDocument} error={refused?.fields.document}
            />
            <DateTimeField label="When it left" optional hint="Left empty: now." zone={zone} value={leftAt} onChange={setLeftAt} error={refused?.fields.takenAt} />
          </Columns>
          {refused && problems.size === 0 && <Problem error={{ title: refused.words }} />}
          {problems.size > 0 && <p role="status"><strong>Nothing was shipped.</strong> Change the packages, then ship again.</p>}
          <Row>
            <Button type="submit" look="primary" busy={busy && 'Shipping…'}>Ship</Button>
            <Button onClick={onBack}>Change the packages</Button>
          </Row>
        </Stack>
      </Form>
    </Question>
  );
}
