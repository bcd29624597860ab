import { useState } from 'react';
import type { Progress } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';

type WhyDecidedProps = {
  title: string;
  /** What a release stands on. */
  basis?: string;
  /** The deviations it speaks for. */
  numbers: number[];
  recording: Progress;
  onBack: () => void;
  onKeep: (reason: string) => void;
  onClose: () => void;
};

/** The last step of a decision: why. */
export function WhyDecided({ title, basis, numbers, recording, onBack, onKeep, onClose }: WhyDecidedProps) {
  const [reason, setReason] = useState('');
  const [isMissing, setMissing] = useState(false);
  const keep = () => (reason.trim().length < 3 ? setMissing(true) : onKeep(reason));
  return (
    <Dialog
      title={title}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onBack}>Back</Button>
          <Button look="primary" busy={recording.busy} onClick={keep}>
            Save
          </Button>
        </>
      }
    >
      <Stack>
        {basis && (
          <p>
            <strong>Basis:</strong> {basis}
          </p>
        )}
        {numbers.length > 1 && <p>One decision for deviations {numbers.join(', ')}: they are open on the same product.</p>}
        <TextArea
          label="Why?"
          hint="What was measured, who was asked, which document says so."
          rows={5}
          maxLength={2000}
          value={reason}
          onChange={setReason}
          error={isMissing && reason.trim().length < 3 ? 'Write it in a few words.' : recording.refused?.fields.reason}
        />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
