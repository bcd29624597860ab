import { correctReceipt, type Receipt } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
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
  const [draft, setDraft] = useState(() => draftOf(receipt));
  const [reason, setReason] = useState('');
  const errors = recording.refused?.fields ?? {};
  const mustAsk = recording.refused?.code === 'implausible-value';
  const save = () =>
    recording.save(
      { correctionId: recording.id, amends: receipt.rowId, reason, receipt: { ...receivedOf(draft), sure: mustAsk || undefined } },
      say('delivery-corrected', { code: receipt.code }),
    );

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
      saveLabel={mustAsk ? say('save-all-the-same') : undefined}
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
