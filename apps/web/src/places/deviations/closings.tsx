import { takeBackClosing, type Deviation } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { KeptDialog } from '../../ui/kept-dialog';
import { Section } from '../../ui/section';
import { WhyDialog } from '../../ui/why-dialog';
import { useSay } from '../../ui/voice';
import { By } from './by';
import { whyNot } from './next-part';
import { Struck } from './struck';

/** Includes closings that were taken back. */
export function Closings({ deviation }: { deviation: Deviation }) {
  const say = useSay('deviations');
  const { roles } = useShop();
  const [takingBack, setTakingBack] = useState<string>();
  const { number, closing, closingsTakenBack, open } = deviation;
  return (
    <>
      {closingsTakenBack.map(({ closingId, note, by, at, takenBack }) => (
        <Section key={closingId} title={say('was-closed')} aside={<By name={by} at={at} />}>
          <p>
            <s>{note || say('without-note')}</s>
          </p>
          <Struck {...takenBack} />
        </Section>
      ))}
      {closing && (
        <Section title={say(open ? 'was-closed' : 'closed')} aside={<By name={closing.by} at={closing.at} />}>
          <p>{closing.note || say('without-note')}</p>
          {open && <p>{say('no-longer-all-decided')}</p>}
          {whyNot('closing', roles) === undefined && (
            <Button look="quiet" onClick={() => setTakingBack(closing.closingId)}>
              {say('take-closing-back')}
            </Button>
          )}
        </Section>
      )}
      {takingBack && <TakeBack number={number} closingId={takingBack} onClose={() => setTakingBack(undefined)} />}
    </>
  );
}

function TakeBack({ number, closingId, onClose }: { number: number; closingId: string; onClose: () => void }) {
  const say = useSay('deviations');
  const recording = useRecording(takeBackClosing);
  if (recording.saved) return <KeptDialog title={say('take-closing-back')} state={recording.saved.state} onClose={onClose} />;
  const save = (reason: string) =>
    void recording.save({ takingBackId: recording.id, closingId, reason }, say('closing-taken-back', { number: String(number) }));
  return (
    <WhyDialog
      title={say('take-closing-back')}
      usual="to-take-back"
      verb={say('take-it-back')}
      saving={recording}
      onReason={save}
      onClose={onClose}
    >
      <p>{say('why-taken-back')}</p>
    </WhyDialog>
  );
}
