import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Row } from '../../../ui/stack';

type KeepOrThrowProps = {
  saveLabel: string;
  busy: boolean;
  onSave: () => void;
  onThrowAway: () => void;
  /** What the draft was begun from, and what stays as it is when it is thrown away. */
  since: string;
  stays: string;
};

/** The two ends of a draft: into the book, or away, which is asked about because nothing brings it back. */
export function KeepOrThrow({ saveLabel, busy, onSave, onThrowAway, since, stays }: KeepOrThrowProps) {
  const [isThrowing, setThrowing] = useState(false);
  return (
    <>
      <Row>
        <Button look="primary" busy={busy && 'Writing it into the book…'} onClick={onSave}>
          {saveLabel}
        </Button>
        <Button look="quiet" onClick={() => setThrowing(true)}>
          Throw the draft away…
        </Button>
      </Row>
      {isThrowing && (
        <Dialog
          title="Throw the draft away?"
          closeLabel="Keep it"
          onClose={() => setThrowing(false)}
          actions={<Button onClick={onThrowAway}>Throw it away</Button>}
        >
          <p>
            What was written here since {since} is then nowhere. {stays}
          </p>
        </Dialog>
      )}
    </>
  );
}
