import { useState } from 'react';
import type { Entry } from '../outbox/entry';
import { Button } from '../ui/button';
import { Row } from '../ui/stack';
import { useSay } from '../ui/voice';
import css from './outbox-slot.module.css';

type ParkedEntryProps = { entry: Entry; onSendAgain: () => void; onDiscard: () => void };

/** Deleting asks once more. */
export function ParkedEntry({ entry, onSendAgain, onDiscard }: ParkedEntryProps) {
  const say = useSay('shell');
  const sayShared = useSay('shared');
  const [isDiscarding, setIsDiscarding] = useState(false);
  return (
    <section className={css.parked} aria-label={entry.what}>
      <p className={css.what}>{entry.what}</p>
      <p>
        {entry.problem?.title} {entry.problem?.detail}
      </p>
      {isDiscarding ? (
        <>
          <p>
            <strong>{say('really-delete')}</strong> {say('then-nowhere')}
          </p>
          <Row>
            <Button onClick={() => setIsDiscarding(false)}>{sayShared('cancel')}</Button>
            <Button onClick={onDiscard}>{say('yes-delete')}</Button>
          </Row>
        </>
      ) : (
        <Row>
          <Button onClick={onSendAgain}>{say('send-again')}</Button>
          <Button look="quiet" onClick={() => setIsDiscarding(true)}>
            {say('delete')}
          </Button>
        </Row>
      )}
    </section>
  );
}
