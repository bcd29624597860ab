import { useState } from 'react';
import type { Entry } from '../outbox/entry';
import { saidIn } from '../outbox/said-in';
import { Button } from '../ui/button';
import { Row } from '../ui/stack';
import { useFigures, useSay } from '../ui/voice';
import css from './outbox-slot.module.css';

type ParkedEntryProps = { entry: Entry; onSendAgain: () => void; onDiscard: () => void };

/** What it says stands there to be read and entered anew. Deleting asks once more. */
export function ParkedEntry({ entry, onSendAgain, onDiscard }: ParkedEntryProps) {
  const say = useSay('shell');
  const sayShared = useSay('shared');
  const { quantity } = useFigures();
  const [isDiscarding, setIsDiscarding] = useState(false);
  return (
    <section className={css.parked} aria-label={entry.what}>
      <p className={css.what}>{entry.what}</p>
      <p>
        {entry.problem?.title} {entry.problem?.detail}
      </p>
      {saidIn(entry.body).map((said, i) => (
        <p key={i}>{typeof said === 'string' ? said : quantity(said)}</p>
      ))}
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
