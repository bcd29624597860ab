import { closeDeviation, type Deviation } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { KeptDialog } from '../../ui/kept-dialog';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';

/** Closes a deviation; the hold of its lot ends with the last one. */
export function Close({ deviation, onClose }: { deviation: Deviation; onClose: () => void }) {
  const recording = useRecording(closeDeviation);
  const [note, setNote] = useState('');
  if (recording.saved) return <KeptDialog title="Closed" state={recording.saved.state} onClose={onClose} />;
  const save = () =>
    recording.save({ closingId: recording.id, deviationId: deviation.deviationId, note }, `Deviation ${deviation.number} closed`);
  return (
    <Dialog
      title={`Close deviation ${deviation.number}`}
      onClose={onClose}
      closeLabel="Not yet"
      actions={
        <Button look="primary" busy={recording.busy} onClick={() => void save()}>
          Close it, under my name
        </Button>
      }
    >
      <Stack>
        <p>
          You have seen what was done about it and what becomes of the product. If no other deviation of the lot is open, the lot is no
          longer on hold.
        </p>
        <TextArea label="Note" optional maxLength={2000} value={note} onChange={setNote} />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
