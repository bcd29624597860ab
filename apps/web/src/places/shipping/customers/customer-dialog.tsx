import { recordCustomer } from '@larderbook/contracts';
import { useId, useState } from 'react';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import type { Customer } from './customer';

type CustomerDialogProps = { corrects?: Customer; onRecorded?: (customer: Customer) => void; onClose: () => void };

/** Adds a customer, or corrects one: what stood there before stays in the book. */
export function CustomerDialog({ corrects, onRecorded, onClose }: CustomerDialogProps) {
  const form = useId();
  const [customerId] = useState(newId);
  const [fields, setFields] = useState({
    name: corrects?.name ?? '',
    address: corrects?.address ?? '',
    contact: corrects?.contact ?? '',
  });
  const { send, busy, errors, problem } = useSend(recordCustomer, (customer) => {
    announce(corrects ? `${customer.name} corrected.` : `${customer.name} added.`);
    onRecorded?.(customer);
    onClose();
  });
  const set = (field: keyof typeof fields) => (value: string) => setFields({ ...fields, [field]: value });
  return (
    <Dialog
      title={corrects ? `Correct ${corrects.name}` : 'Add a customer'}
      onClose={onClose}
      actions={
        <Button type="submit" form={form} look="primary" busy={busy}>
          {corrects ? 'Keep the correction' : 'Add'}
        </Button>
      }
    >
      <Form id={form} errors={errors} busy={busy} onSubmit={() => send({ customerId, ...fields, amends: corrects?.customerId })}>
        <Stack>
          <TextField label="Name" maxLength={120} autoComplete="off" value={fields.name} onChange={set('name')} error={errors.name} />
          <TextArea
            label="Address"
            hint="Where the packages are."
            rows={2}
            maxLength={400}
            value={fields.address}
            onChange={set('address')}
            error={errors.address}
          />
          <TextField
            label="Contact"
            hint="Whom to call in a recall, and the number."
            maxLength={200}
            autoComplete="off"
            value={fields.contact}
            onChange={set('contact')}
            error={errors.contact}
          />
          {problem !== undefined && <Problem error={problem} />}
        </Stack>
      </Form>
    </Dialog>
  );
}
