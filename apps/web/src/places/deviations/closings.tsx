import { takeBackClosing, type Deviation } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { KeptDialog } from '../../ui/kept-dialog';
import { Section } from '../../ui/section';
import { WhyDialog } from '../../ui/why-dialog';
import { By } from './by';
import { whyNot } from './next-part';
import { Struck } from './struck';

/** The closing of a deviation, which may be taken back, and those that were. */
export function Closings({ deviation }: { deviation: Deviation }) {
  const { roles } = useShop();
  const [takingBack, setTakingBack] = useState<string>();
  const { number, closing, closingsTakenBack, open } = deviation;
  return (
    <>
      {closingsTakenBack.map(({ closingId, note, by, at, takenBack }) => (
        <Section key={closingId} title="Was closed" aside={<By name={by} at={at} />}>
          <p>
            <s>{note || 'Without a note.'}</s>
          </p>
          <Struck {...takenBack} />
        </Section>
      ))}
      {closing && (
        <Section title={open ? 'Was closed' : 'Closed'} aside={<By name={closing.by} at={closing.at} />}>
          {closing.note ? <p>{closing.note}</p> : <p>Without a note.</p>}
          {open && <p>A weight or a decision was corrected or voided since, so not all of it is decided.</p>}
          {whyNot('closing', roles) === undefined && (
            <Button look="quiet" onClick={() => setTakingBack(closing.closingId)}>
              Take the closing back
            </Button>
          )}
        </Section>
      )}
      {takingBack && <TakeBack number={number} closingId={takingBack} onClose={() => setTakingBack(undefined)} />}
    </>
  );
}

function TakeBack({ number, closingId, onClose }: { number: number; closingId: string; onClose: () => void }) {
  const recording = useRecording(takeBackClosing);
  if (recording.saved) return <KeptDialog title="Taken back" state={recording.saved.state} onClose={onClose} />;
  const save = (reason: string) =>
    void recording.save({ takingBackId: recording.id, closingId, reason }, `Closing of deviation ${number} taken back`);
  return (
    <WhyDialog title="Take the closing back" usual="to-take-back" verb="Take it back" saving={recording} onReason={save} onClose={onClose}>
      <p>Why? The deviation is open again, and what it held is held. Both stay here, with this reason.</p>
    </WhyDialog>
  );
}
