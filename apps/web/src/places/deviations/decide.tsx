import { decisions, recordDisposition, type Deviation } from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Caution } from '../../ui/caution';
import { Dialog } from '../../ui/dialog';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { Tiles } from '../../ui/tiles';
import { decisionWords } from './decision-words';
import { HowMuch } from './how-much';
import { KeptDialog } from './kept-dialog';
import { useAtStake } from './use-at-stake';

type Decision = (typeof decisions)[number];

/** What becomes of the product, one step at a time: the decision, how much of it, and on what it is based. */
export function Decide({ deviation, onClose }: { deviation: Deviation; onClose: () => void }) {
  const recording = useRecording(recordDisposition);
  const stake = useAtStake(deviation);
  const [decision, setDecision] = useState<Decision>();
  const [weight, setWeight] = useState<EnteredMass>();
  const [basis, setBasis] = useState('');
  const [isMissing, setMissing] = useState(false);

  if (recording.saved)
    return <KeptDialog title="What becomes of the product" state={recording.saved.state} onClose={onClose} />;
  if (!decision) {
    return (
      <Dialog title="What becomes of the product?" onClose={onClose}>
        <Stack>
          <Tiles
            label="Decisions"
            tiles={decisions.map((each) => ({
              key: each,
              title: decisionWords[each].title,
              lines: [decisionWords[each].detail],
              onTap: () => setDecision(each),
            }))}
          />
          <Caution>
            Larderbook keeps the decision and what it is based on; it does not say that product is safe. That is for the
            responsible person and, where it is needed, a licensed process authority and the inspector.
          </Caution>
        </Stack>
      </Dialog>
    );
  }
  const { title } = decisionWords[decision];
  const isNothing = stake === 0; // nothing was put in, so there is nothing to weigh
  if (!weight && !isNothing)
    return (
      <HowMuch
        title={title}
        stake={stake}
        onBack={() => setDecision(undefined)}
        onWeight={setWeight}
        onClose={onClose}
      />
    );
  const save = () => {
    if (basis.trim().length < 3) return setMissing(true);
    void recording.save(
      { dispositionId: recording.id, deviationId: deviation.deviationId, decision, weight, basis },
      `Deviation ${deviation.number}: ${decision}`,
    );
  };
  const back = () => (weight ? setWeight(undefined) : setDecision(undefined));
  return (
    <Dialog
      title={weight ? `${title} ${weight.value} ${weight.unit}` : title}
      onClose={onClose}
      actions={
        <>
          <Button onClick={back}>Back</Button>
          <Button look="primary" busy={recording.busy && 'Keeping it…'} onClick={save}>
            Keep
          </Button>
        </>
      }
    >
      <Stack>
        <TextArea
          label="On what is it based?"
          hint="What was measured, who was asked, which document says so."
          rows={5}
          maxLength={2000}
          value={basis}
          onChange={setBasis}
          error={isMissing && basis.trim().length < 3 ? 'Write it in a few words.' : recording.refused?.fields.basis}
        />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
