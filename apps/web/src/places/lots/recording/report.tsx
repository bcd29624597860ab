import { openDeviation, type Lot } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { useSay } from '../../../ui/voice';
import { Circumstances } from './circumstances';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';

/** Marks a deviation about no substance of the formula. */
const ELSE = 'something else';

/** The lot is on hold from then on (9 CFR 417.3(b)). */
export function Report({ lot, controlPointId, onClose }: { lot: Lot; controlPointId?: string; onClose: () => void }) {
  const say = useSay('lot-forms');
  const sayLimits = useSay('limits');
  const recording = useRecording(openDeviation);
  const takenAt = useTakenAt();
  const [description, setDescription] = useState('');
  const [isShort, setShort] = useState(false);
  const undecided = (lot.unjudged ?? []).filter(({ settled }) => !settled).map(({ substance }) => substance);
  const [about, setAbout] = useState<(typeof undecided)[number] | typeof ELSE | undefined>(controlPointId ? undefined : undecided[0]);
  const substance = about === ELSE ? undefined : about;
  if (recording.saved) {
    return <SavedDialog title={say('on-hold')} what={description} saved={recording.saved} onClose={onClose} />;
  }
  const save = () => {
    if (description.trim().length < 3) return setShort(true);
    void recording.save(
      { deviationId: recording.id, lotId: lot.lotId, controlPointId, substance, description, takenAt: takenAt.toRecord() },
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
        {about !== undefined && (
          <ChoiceField
            label={say('about-substance')}
            choices={[
              ...undecided.map((one) => ({ value: one, name: sayLimits(codeOf('substance', one)) })),
              { value: ELSE, name: say('about-something-else') },
            ]}
            value={about}
            onChange={setAbout}
          />
        )}
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
