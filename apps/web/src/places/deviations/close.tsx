import { closeDeviation, type Deviation } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { KeptDialog } from '../../ui/kept-dialog';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { useSay } from '../../ui/voice';

/** The hold of the lot ends with its last deviation. */
export function Close({ deviation, onClose }: { deviation: Deviation; onClose: () => void }) {
  const say = useSay('deviations');
  const recording = useRecording(closeDeviation);
  const [note, setNote] = useState('');
  const number = String(deviation.number);
  if (recording.saved) return <KeptDialog title={say('closing-of', { number })} state={recording.saved.state} onClose={onClose} />;
  const save = () => recording.save({ closingId: recording.id, deviationId: deviation.deviationId, note }, say('closing-of', { number }));
  return (
    <Dialog
      title={say('close-numbered', { number })}
      onClose={onClose}
      actions={
        <Button look="primary" busy={recording.busy} onClick={() => void save()}>
          {say('close-under-my-name')}
        </Button>
      }
    >
      <Stack>
        <p>{say('seen-what-was-done')}</p>
        <TextArea label={say('note')} optional maxLength={2000} value={note} onChange={setNote} />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
