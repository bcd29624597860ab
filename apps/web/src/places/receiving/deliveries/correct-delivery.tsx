import { correctReceipt, type Receipt } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { useSure } from '../../../outbox/use-sure';
import { FormDialog } from '../../../ui/form-dialog';
import { KeptDialog } from '../../../ui/kept-dialog';
import { TextArea } from '../../../ui/text-area';
import { useSay } from '../../../ui/voice';
import { draftOf, receivedOf } from './corrected-draft';
import { DeliveryFields } from './delivery-fields';

/** What was made of the delivery is judged again. */
export function CorrectDelivery({ receipt, onClose }: { receipt: Receipt; onClose: () => void }) {
  const say = useSay('receiving');
  const recording = useRecording(correctReceipt);
  const { degrees } = useShop();
  const [draft, setDraft] = useState(() => draftOf(receipt, degrees));
  const [reason, setReason] = useState('');
  const errors = recording.refused?.fields ?? {};
  const { isSure, setAsked } = useSure(recording.refused);
  const received = receivedOf(draft);
  const sure = isSure(received);
  const save = () => {
    setAsked(received);
    return recording.save(
      { correctionId: recording.id, amends: receipt.rowId, reason, receipt: { ...received, sure: sure || undefined } },
      say('delivery-corrected', { code: receipt.code }),
    );
  };

  if (recording.saved)
    return (
      <KeptDialog
        title={say('delivery-of', { code: receipt.code })}
        state={recording.saved.state}
        recorded={say('judged-again')}
        onClose={onClose}
      />
    );
  return (
    <FormDialog
      title={say('correct-delivery', { code: receipt.code })}
      errors={errors}
      problem={recording.refused && { title: recording.refused.words }}
      busy={recording.busy}
      saveLabel={sure ? say('save-all-the-same') : undefined}
      onSave={() => void save()}
      onClose={onClose}
    >
      <TextArea
        label={say('why-corrected')}
        hint={say('stays-struck')}
        maxLength={2000}
        value={reason}
        onChange={setReason}
        error={errors.reason}
      />
      <DeliveryFields receipt={receipt} draft={draft} errors={errors} onChange={setDraft} />
    </FormDialog>
  );
}
