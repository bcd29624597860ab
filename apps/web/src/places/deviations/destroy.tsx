import { recordDestruction, type Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { DateTimeField } from '../../ui/date-time-field';
import { Dialog } from '../../ui/dialog';
import { KeptDialog } from '../../ui/kept-dialog';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { useSay } from '../../ui/voice';
import { weightOf } from './weights';

/** The record that another replaces, and why. */
export type AmendingDestruction = NonNullable<Disposition['destruction']> & { reason: string };
type DestroyProps = { disposition: Disposition; amending?: AmendingDestruction; onClose: () => void };

export function Destroy({ disposition, amending, onClose }: DestroyProps) {
  const say = useSay('settling');
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const recording = useRecording(recordDestruction);
  const [method, setMethod] = useState(amending?.method ?? '');
  const [takenAt, setTakenAt] = useState(() => amending?.at ?? new Date().toISOString());
  const [isMissing, setMissing] = useState(false);
  const { dispositionId, weight, code } = disposition;
  const title = say('destroyed-of', { weight: weightOf(weight), code });
  if (recording.saved) return <KeptDialog title={say('destroyed')} state={recording.saved.state} onClose={onClose} />;
  const save = () => {
    if (method.trim().length < 3 || !takenAt) return setMissing(true);
    void recording.save(
      {
        ...{ destructionId: recording.id, dispositionId, method, takenAt },
        ...(amending && { amends: amending.destructionId, reason: amending.reason }),
      },
      title,
    );
  };
  return (
    <Dialog
      title={title}
      onClose={onClose}
      actions={
        <Button look="primary" busy={recording.busy} onClick={save}>
          {sayShared('save')}
        </Button>
      }
    >
      <Stack>
        <TextArea
          label={say('how-destroyed')}
          hint={say('how-destroyed-hint')}
          rows={4}
          maxLength={2000}
          value={method}
          onChange={setMethod}
          error={isMissing && method.trim().length < 3 ? say('write-few-words') : recording.refused?.fields.method}
        />
        <DateTimeField
          label={say('when')}
          zone={zone}
          value={takenAt}
          onChange={setTakenAt}
          error={isMissing && !takenAt ? say('when-missing') : recording.refused?.fields.takenAt}
        />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
