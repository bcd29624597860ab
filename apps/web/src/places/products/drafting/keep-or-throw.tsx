import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Row } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';

type KeepOrThrowProps = {
  saveLabel: string;
  busy: boolean;
  onSave: () => void;
  onThrowAway: () => void;
  /** What becomes of the draft when it is thrown away, and what stays. */
  afterwards: string;
};

export function KeepOrThrow({ saveLabel, busy, onSave, onThrowAway, afterwards }: KeepOrThrowProps) {
  const sayShared = useSay('shared');
  const say = useSay('plan-drafts');
  const [isThrowing, setThrowing] = useState(false);
  return (
    <>
      <Row>
        <Button look="primary" busy={busy && sayShared('saving')} onClick={onSave}>
          {saveLabel}
        </Button>
        <Button look="quiet" onClick={() => setThrowing(true)}>
          {say('throw-away-ask')}
        </Button>
      </Row>
      {isThrowing && (
        <Dialog
          title={say('throw-away-title')}
          onClose={() => setThrowing(false)}
          actions={<Button onClick={onThrowAway}>{say('throw-away')}</Button>}
        >
          <p>{afterwards}</p>
        </Dialog>
      )}
    </>
  );
}
