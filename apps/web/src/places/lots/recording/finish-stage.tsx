import { endStage, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import { useSay } from '../../../ui/voice';
import { previewEndOf } from '../preview/preview-curve';
import { amendsOf, type Amending } from './amending';
import { Circumstances } from './circumstances';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';

type FinishStageProps = { lot: Lot; point: ControlPointOnLot; amending?: Amending; onClose: () => void };

export function FinishStage({ lot, point, amending, onClose }: FinishStageProps) {
  const say = useSay('lot-forms');
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const { tell } = useTell();
  const recording = useRecording(endStage);
  const takenAt = useTakenAt(amending);
  const { controlPointId, name, correctiveAction } = point.controlPoint;
  const verdicts = previewEndOf(point, lot);
  const what = say('finished', { point: name });
  const save = () =>
    recording.save(
      { stageEndId: recording.id, lotId: lot.lotId, controlPointId, takenAt: takenAt.toRecord(), ...amendsOf(amending) },
      say('what-in-lot', { what, lot: lot.code }),
    );

  if (recording.saved) {
    return (
      <SavedDialog
        title={name}
        what={what}
        saved={recording.saved}
        preview={verdicts}
        limits={point.controlPoint.limits}
        correctiveAction={correctiveAction}
        onClose={onClose}
      />
    );
  }
  const isSafe = verdicts.every(({ kind }) => kind === 'met');
  return (
    <Dialog
      title={say(amending ? 'correct-end' : 'finish', { point: name })}
      onClose={onClose}
      actions={
        <Button look={isSafe ? 'primary' : 'plain'} busy={recording.busy} onClick={() => void save()}>
          {amending ? sayShared('save') : say(isSafe ? 'it-is-finished' : 'finish-anyway')}
        </Button>
      }
    >
      {!amending && <Circumstances takenAt={takenAt} />}
      <Stack>
        {amending && <DateTimeField label={say('when-finished')} zone={zone} value={takenAt.value ?? ''} onChange={takenAt.setValue} />}
        <p>{say('from-then-on')}</p>
        {verdicts.map((verdict, index) => (
          <VerdictWords key={index} verdict={tell(verdict, verdict.on)} />
        ))}
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
