import { recordCustomer } from '@larderbook/contracts';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { FormDialog } from '../../../ui/form-dialog';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import type { Customer } from './customer';

type CustomerDialogProps = { corrects?: Customer; onRecorded?: (customer: Customer) => void; onClose: () => void };

/** What stood there before a correction stays on record. */
export function CustomerDialog({ corrects, onRecorded, onClose }: CustomerDialogProps) {
  const say = useSay('shipping');
  const [customerId] = useState(newId);
  const [fields, setFields] = useState({
    name: corrects?.name ?? '',
    address: corrects?.address ?? '',
    contact: corrects?.contact ?? '',
  });
  const { send, busy, errors, problem } = useSend(recordCustomer, (customer) => {
    announce(say(corrects ? 'corrected' : 'added', { name: customer.name }));
    onRecorded?.(customer);
    onClose();
  });
  const set = (field: keyof typeof fields) => (value: string) => setFields({ ...fields, [field]: value });
  return (
    <FormDialog
      title={corrects ? say('correct-named', { name: corrects.name }) : say('add-customer')}
      errors={errors}
      problem={problem}
      busy={busy}
      onSave={() => send({ customerId, ...fields, amends: corrects?.customerId })}
      onClose={onClose}
    >
      <TextField label={say('name')} maxLength={120} autoComplete="off" value={fields.name} onChange={set('name')} error={errors.name} />
      <TextArea
        label={say('address')}
        hint={say('address-hint')}
        rows={2}
        maxLength={400}
        value={fields.address}
        onChange={set('address')}
        error={errors.address}
      />
      <TextField
        label={say('contact')}
        hint={say('contact-hint')}
        maxLength={200}
        autoComplete="off"
        value={fields.contact}
        onChange={set('contact')}
        error={errors.contact}
      />
    </FormDialog>
  );
}
