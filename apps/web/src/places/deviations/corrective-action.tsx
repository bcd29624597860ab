import { recordCorrectiveAction, type Deviation } from '@larderbook/contracts';
import { useState } from 'react';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { Problem } from '../../ui/problem';
import { Question } from '../../ui/question';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { fourParts } from './four-parts';
import { KeptDialog } from './kept-dialog';
import { useDraft } from './use-draft';

/** What was done about a deviation: the four parts, one question at a time. */
export function CorrectiveAction({ deviation, onClose }: { deviation: Deviation; onClose: () => void }) {
  const recording = useRecording(recordCorrectiveAction);
  const { draft, write, forget } = useDraft(deviation.deviationId);
  const [at, setAt] = useState(0);
  const [isMissing, setMissing] = useState(false);
  const part = fourParts[at] ?? fourParts[0];
  const isLast = at === fourParts.length - 1;
  const prepared = deviation.controlPoint?.correctiveAction;

  const go = (to: number) => {
    setMissing(false);
    setAt(to);
  };
  const next = async () => {
    if (draft[part.key].trim().length < 3) return setMissing(true);
    const unanswered = fourParts.findIndex(({ key }) => draft[key].trim().length < 3);
    if (!isLast || unanswered !== -1) return go(isLast ? unanswered : at + 1);
    const saved = await recording.save(
      { actionId: recording.id, deviationId: deviation.deviationId, ...draft, takenAt: new Date().toISOString() },
      `Corrective action, deviation ${deviation.number}`,
    );
    if (saved) forget();
  };

  if (recording.saved) return <KeptDialog title="Corrective action" state={recording.saved.state} onClose={onClose} />;
  return (
    <Dialog
      title="Corrective action"
      onClose={onClose}
      actions={
        <>
          {at > 0 && <Button onClick={() => go(at - 1)}>Back</Button>}
          <Button look="primary" busy={recording.busy && 'Keeping it…'} onClick={() => void next()}>
            {isLast ? 'Keep' : 'Next'}
          </Button>
        </>
      }
    >
      <Question
        key={part.key}
        title={part.question}
        hint={`${at + 1} of ${fourParts.length} · 9 CFR 417.3(a)(${at + 1})`}
      >
        <Stack gap="near">
          {prepared && at < 2 && (
            <p>
              <strong>The plan says:</strong> {prepared}
            </p>
          )}
          <TextArea
            label={part.label}
            hint={part.hint}
            rows={5}
            maxLength={2000}
            value={draft[part.key]}
            onChange={(words) => write({ ...draft, [part.key]: words })}
            error={
              isMissing && draft[part.key].trim().length < 3
                ? 'Write it in a few words.'
                : recording.refused?.fields[part.key]
            }
          />
          {recording.refused && <Problem error={{ title: recording.refused.words }} />}
        </Stack>
      </Question>
    </Dialog>
  );
}
