import { correctDisposition, type Deviation, type Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../outbox/use-recording';
import { WhyDialog } from '../../ui/why-dialog';
import { useSay } from '../../ui/voice';
import { Deciding } from './decide';
import { givenBack } from './given-back';

type CorrectDecidedProps = { deviation: Deviation; disposition: Disposition; said: string; onClose: () => void };

/** The old decision stays, struck through. */
export function CorrectDecided({ deviation, disposition, said, onClose }: CorrectDecidedProps) {
  const say = useSay('settling');
  const sayShared = useSay('shared');
  const recording = useRecording(correctDisposition);
  const [reason, setReason] = useState<string>();
  if (!reason)
    return (
      <WhyDialog
        title={say('correct-what', { what: said })}
        usual="to-correct"
        verb={sayShared('next')}
        onReason={setReason}
        onClose={onClose}
      >
        <p>{say('why-decision-corrected')}</p>
      </WhyDialog>
    );
  const { dispositionId: amends, speaksFor } = disposition;
  return (
    <Deciding
      products={deviation.products.map((product) => givenBack(product, disposition))}
      speaksFor={() => speaksFor}
      recording={recording}
      onSave={(made, what) =>
        void recording.save(
          { correctionId: recording.id, amends, reason, disposition: made },
          say('decided-for-corrected', { number: String(deviation.number), what }),
        )
      }
      onClose={onClose}
    />
  );
}
