import { recordDestruction, type Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { DateTimeField } from '../../ui/date-time-field';
import { Dialog } from '../../ui/dialog';
import { KeptDialog } from '../../ui/kept-dialog';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { sayWeight } from './weights';

/** The record that another takes the place of, and why. */
export type AmendingDestruction = NonNullable<Disposition['destruction']> & { reason: string };
type DestroyProps = { disposition: Disposition; amending?: AmendingDestruction; onClose: () => void };

/** How and when condemned product was destroyed, or what its record should have said. */
export function Destroy({ disposition, amending, onClose }: DestroyProps) {
  const { zone } = useShop();
  const recording = useRecording(recordDestruction);
  const [method, setMethod] = useState(amending?.method ?? '');
  const [takenAt, setTakenAt] = useState(() => amending?.at ?? new Date().toISOString());
  const [isMissing, setMissing] = useState(false);
  const { dispositionId, weight, code } = disposition;
  if (recording.saved) return <KeptDialog title="Destroyed" state={recording.saved.state} onClose={onClose} />;
  const keep = () => {
    if (method.trim().length < 3 || !takenAt) return setMissing(true);
    void recording.save(
      {
        ...{ destructionId: recording.id, dispositionId, method, takenAt },
        ...(amending && { amends: amending.destructionId, reason: amending.reason }),
      },
      `Destroyed ${sayWeight(weight)} of ${code}`,
    );
  };
  return (
    <Dialog
      title={`Destroyed: ${sayWeight(weight)} of ${code}`}
      onClose={onClose}
      actions={
        <Button look="primary" busy={recording.busy} onClick={keep}>
          Save
        </Button>
      }
    >
      <Stack>
        <TextArea
          label="How was it destroyed?"
          hint="Made unfit for food and by what; who took it away."
          rows={4}
          maxLength={2000}
          value={method}
          onChange={setMethod}
          error={isMissing && method.trim().length < 3 ? 'Write it in a few words.' : recording.refused?.fields.method}
        />
        <DateTimeField
          label="When?"
          zone={zone}
          value={takenAt}
          onChange={setTakenAt}
          error={isMissing && !takenAt ? 'Give the date and time.' : recording.refused?.fields.takenAt}
        />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
