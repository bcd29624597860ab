import { recordCorrectiveAction, type CorrectiveAction as Action, type Deviation } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';
import { useState } from 'react';
import type { Entry } from '../../outbox/entry';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Dialog } from '../../ui/dialog';
import { KeptDialog } from '../../ui/kept-dialog';
import { Problem } from '../../ui/problem';
import { Question } from '../../ui/question';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { useSay } from '../../ui/voice';
import { actionParts, type ActionPart } from './action-parts';
import { Recurrence } from './recurrence';
import { useDraft, type Draft } from './use-draft';

/** The action that another replaces, and why. */
export type AmendingAction = Deviation['actions'][number] & { reason: string };
type CorrectiveActionProps = { deviation: Deviation; amending?: AmendingAction; refused?: Entry; onClose: () => void };

export function CorrectiveAction({ deviation, amending, refused, onClose }: CorrectiveActionProps) {
  const say = useSay('deviations');
  const sayShared = useSay('shared');
  const recording = useRecording(recordCorrectiveAction);
  const { draft, write, forget } = useDraft(amending?.actionId ?? deviation.deviationId, amending?.action, refused);
  const [at, setAt] = useState(0);
  const [isMissing, setMissing] = useState(false);
  const parts = actionParts(deviation, useSay('settling'));
  const part = (parts[at] ?? parts[0]) as ActionPart;
  const isLast = at === parts.length - 1;
  const prepared = deviation.controlPoint?.correctiveAction;

  const go = (to: number) => {
    setMissing(false);
    setAt(to);
  };
  const next = async () => {
    if (!isWritten(draft, part)) return setMissing(true);
    const unanswered = parts.findIndex((each) => !isWritten(draft, each));
    if (!isLast || unanswered !== -1) return go(isLast ? unanswered : at + 1);
    const { deviationId, number, form } = deviation;
    const said = Object.fromEntries(parts.map(({ key }) => [key, draft[key] ?? '']));
    const takenAt = amending?.made.at ?? new Date().toISOString();
    const corrects = amending && { amends: amending.actionId, reason: amending.reason };
    const saved = await recording.save(
      { actionId: recording.id, deviationId, action: { form, ...said } as Action, takenAt, ...corrects },
      say(amending ? 'corrected-action-of' : 'action-of', { number: String(number) }),
    );
    if (saved) await forget();
  };

  if (recording.saved) return <KeptDialog title={say('part-action')} state={recording.saved.state} onClose={onClose} />;
  return (
    <Dialog
      title={say(amending ? 'correct-action' : 'part-action')}
      onClose={onClose}
      actions={
        <>
          {at > 0 && <Button onClick={() => go(at - 1)}>{sayShared('back')}</Button>}
          <Button look="primary" busy={recording.busy} onClick={() => void next()}>
            {sayShared(isLast ? 'save' : 'next')}
          </Button>
        </>
      }
    >
      <Question key={part.key} title={part.question} hint={whereIn(at, parts, say)}>
        <Stack gap="near">
          {prepared && at < 2 && (
            <p>
              <strong>{say('plan-says')}</strong> {prepared}
            </p>
          )}
          {part.key === 'different' && <Recurrence recurrence={deviation.recurrence} />}
          <TextArea
            label={part.label}
            hint={part.hint}
            rows={part.key === 'reassessedBy' ? 1 : 5}
            maxLength={part.key === 'reassessedBy' ? 120 : 2000}
            value={draft[part.key] ?? ''}
            onChange={(words) => write({ ...draft, [part.key]: words })}
            error={isMissing && !isWritten(draft, part) ? say('write-few-words') : undefined}
          />
          {recording.refused && <Problem error={{ title: recording.refused.words }} />}
        </Stack>
      </Question>
    </Dialog>
  );
}

const isWritten = (draft: Draft, { key }: ActionPart): boolean => (draft[key] ?? '').trim().length >= 3;

function whereIn(at: number, parts: readonly ActionPart[], say: SayOf<'deviations'>): string {
  const [part, paragraph] = [String(at + 1), parts[at]?.paragraph];
  const counted = { part, parts: String(parts.length) };
  return paragraph ? say('part-of-parts-cfr', { ...counted, paragraph }) : say('part-of-parts', counted);
}
