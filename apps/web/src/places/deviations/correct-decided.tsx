import { correctDisposition, type Deviation, type Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../outbox/use-recording';
import { WhyDialog } from '../../ui/why-dialog';
import { Deciding } from './decide';
import { givenBack } from './given-back';

type CorrectDecidedProps = { deviation: Deviation; disposition: Disposition; said: string; onClose: () => void };

/** Corrects a decision: first why, then the decision as it should have been. The old one stays, struck through. */
export function CorrectDecided({ deviation, disposition, said, onClose }: CorrectDecidedProps) {
  const recording = useRecording(correctDisposition);
  const [reason, setReason] = useState<string>();
  if (!reason)
    return (
      <WhyDialog title={`Correct: ${said}`} usual="to-correct" verb="Next" onReason={setReason} onClose={onClose}>
        <p>Why is it corrected? It stays here, struck through, with this reason; the new decision takes its place.</p>
      </WhyDialog>
    );
  const { dispositionId: amends, speaksFor } = disposition;
  return (
    <Deciding
      deviation={deviation}
      products={deviation.products.map((product) => givenBack(product, disposition))}
      speaksFor={() => speaksFor}
      recording={recording}
      onKeep={(made, words) =>
        void recording.save({ correctionId: recording.id, amends, reason, disposition: made }, `${words}, corrected`)
      }
      onClose={onClose}
    />
  );
}
