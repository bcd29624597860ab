import { useState } from 'react';
import type { Progress } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { useSay } from '../../ui/voice';

type WhyDecidedProps = {
  title: string;
  basis?: string;
  /** Numbers of the deviations it speaks for. */
  numbers: number[];
  recording: Progress;
  onBack: () => void;
  onSave: (reason: string) => void;
  onClose: () => void;
};

export function WhyDecided({ title, basis, numbers, recording, onBack, onSave, onClose }: WhyDecidedProps) {
  const say = useSay('settling');
  const sayShared = useSay('shared');
  const [reason, setReason] = useState('');
  const [isMissing, setMissing] = useState(false);
  const save = () => (reason.trim().length < 3 ? setMissing(true) : onSave(reason));
  return (
    <Dialog
      title={title}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onBack}>{sayShared('back')}</Button>
          <Button look="primary" busy={recording.busy} onClick={save}>
            {sayShared('save')}
          </Button>
        </>
      }
    >
      <Stack>
        {basis && (
          <p>
            <strong>{say('basis')}</strong> {basis}
          </p>
        )}
        {numbers.length > 1 && <p>{say('for-several', { numbers: numbers.map(String) })}</p>}
        <TextArea
          label={say('why')}
          hint={say('why-hint')}
          rows={5}
          maxLength={2000}
          value={reason}
          onChange={setReason}
          error={isMissing && reason.trim().length < 3 ? say('write-few-words') : recording.refused?.fields.reason}
        />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
