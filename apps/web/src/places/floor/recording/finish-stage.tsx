import { endStage, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { VerdictWords } from '../../../ui/verdict-words';
import { previewEndOf } from '../preview/preview-curve';
import { Circumstances } from './circumstances';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';

type FinishStageProps = { lot: Lot; point: ControlPointOnLot; onClose: () => void };

/** Says that a cook or a chill is over; before that it shows how its limits will then be judged. */
export function FinishStage({ lot, point, onClose }: FinishStageProps) {
  const recording = useRecording(endStage);
  const takenAt = useTakenAt();
  const { controlPointId, name, correctiveAction } = point.controlPoint;
  const verdicts = previewEndOf(point, lot);
  const what = `${name} finished`;
  const save = () =>
    recording.save(
      { stageEndId: recording.id, lotId: lot.lotId, controlPointId, takenAt: takenAt.at() },
      `${what}, lot ${lot.code}`,
    );

  if (recording.saved) {
    return (
      <SavedDialog
        title={name}
        what={what}
        saved={recording.saved}
        preview={verdicts}
        correctiveAction={correctiveAction}
        onClose={onClose}
      />
    );
  }
  const isSafe = verdicts.every(({ kind }) => kind === 'met');
  return (
    <Dialog
      title={`Finish: ${name}`}
      onClose={onClose}
      closeLabel="Not yet"
      actions={
        <Button look={isSafe ? 'primary' : 'plain'} busy={recording.busy && 'Keeping it…'} onClick={() => void save()}>
          {isSafe ? 'It is finished' : 'Finish all the same'}
        </Button>
      }
    >
      <Circumstances takenAt={takenAt} />
      <Stack>
        <p>From then on no more readings are waited for, and each limit is judged over the whole stage:</p>
        {verdicts.map((verdict) => (
          <VerdictWords key={`${verdict.limit} ${verdict.because}`} verdict={verdict} />
        ))}
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
