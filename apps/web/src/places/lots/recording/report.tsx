import { openDeviation, type Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { useSay } from '../../../ui/voice';
import { Circumstances } from './circumstances';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';

/** Something unforeseen: opens a deviation by hand, and the lot is on hold from then on (9 CFR 417.3(b)). */
export function Report({ lot, controlPointId, onClose }: { lot: Lot; controlPointId?: string; onClose: () => void }) {
  const say = useSay('lot-forms');
  const recording = useRecording(openDeviation);
  const takenAt = useTakenAt();
  const [description, setDescription] = useState('');
  const [isShort, setShort] = useState(false);
  if (recording.saved) {
    return <SavedDialog title={say('on-hold')} what={description} saved={recording.saved} onClose={onClose} />;
  }
  const save = () => {
    if (description.trim().length < 3) return setShort(true);
    void recording.save(
      { deviationId: recording.id, lotId: lot.lotId, controlPointId, description, takenAt: takenAt.at() },
      say('deviation-of-lot', { lot: lot.code }),
    );
  };
  return (
    <Dialog
      title={say('unforeseen')}
      onClose={onClose}
      actions={
        <Button look="primary" busy={recording.busy} onClick={save}>
          {say('save-and-hold')}
        </Button>
      }
    >
      <Circumstances takenAt={takenAt} />
      <Stack>
        <TextArea
          label={say('what-was-seen')}
          hint={say('set-aside')}
          maxLength={2000}
          value={description}
          onChange={setDescription}
          error={isShort && description.trim().length < 3 ? say('say-what-seen') : undefined}
        />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
