import { useState } from 'react';
import type { Progress } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { VerdictWords, type SaidVerdict } from '../../../ui/verdict-words';
import { useSay } from '../../../ui/voice';

type FailedCheckProps = {
  name: string;
  verdict: SaidVerdict;
  action: string;
  saving: Progress;
  onAction: (action: string) => void;
  onSave: () => void;
  onReadAgain: () => void;
  onClose: () => void;
};

export function FailedCheck({ name, verdict, action, saving, onAction, onSave, onReadAgain, onClose }: FailedCheckProps) {
  const say = useSay('instruments');
  const sayShared = useSay('shared');
  const [isUnsaid, setUnsaid] = useState(false);
  const save = () => {
    const isSaid = action.trim().length >= 3;
    setUnsaid(!isSaid);
    if (isSaid) onSave();
  };
  return (
    <Dialog title={name} onClose={onClose}>
      <Stack>
        <VerdictWords size="large" verdict={verdict} />
        <TextArea
          label={say('what-was-done')}
          hint={say('what-was-done-hint')}
          maxLength={400}
          value={action}
          error={isUnsaid ? say('say-what-was-done') : undefined}
          onChange={onAction}
        />
        {saving.refused && <Problem error={{ title: saving.refused.words }} />}
        <Row>
          <Button look="primary" busy={saving.busy} onClick={save}>
            {sayShared('save')}
          </Button>
          <Button onClick={onReadAgain}>{say('read-again')}</Button>
        </Row>
      </Stack>
    </Dialog>
  );
}
