import { useState } from 'react';
import type { Entry } from '../outbox/entry';
import { Button } from '../ui/button';
import { Row } from '../ui/stack';
import css from './outbox-slot.module.css';

type ParkedEntryProps = { entry: Entry; onSendAgain: () => void; onGiveUp: () => void };

/** One entry the server refused: its sentence, and the two ways out. Giving up asks once more. */
export function ParkedEntry({ entry, onSendAgain, onGiveUp }: ParkedEntryProps) {
  const [giving, setGiving] = useState(false);
  return (
    <section className={css.parked} aria-label={entry.what}>
      <p className={css.what}>{entry.what}</p>
      <p>
        {entry.problem?.title} {entry.problem?.detail}
      </p>
      {giving ? (
        <>
          <p>
            <strong>Give this entry up?</strong> It is then nowhere: not on this device and not in the record book.
          </p>
          <Row>
            <Button onClick={() => setGiving(false)}>Keep it here</Button>
            <Button onClick={onGiveUp}>Give it up</Button>
          </Row>
        </>
      ) : (
        <Row>
          <Button onClick={onSendAgain}>Send again</Button>
          <Button look="quiet" onClick={() => setGiving(true)}>
            Give up…
          </Button>
        </Row>
      )}
    </section>
  );
}
