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
import { previewEndOf } from '../preview/preview-curve';
import { amendsOf, type Amending } from './amending';
import { Circumstances } from './circumstances';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';

type FinishStageProps = { lot: Lot; point: ControlPointOnLot; amending?: Amending; onClose: () => void };

/** Says that a cook or a chill is over; before that it shows how its limits will then be judged. */
export function FinishStage({ lot, point, amending, onClose }: FinishStageProps) {
  const { zone } = useShop();
  const { tell } = useTell();
  const recording = useRecording(endStage);
  const takenAt = useTakenAt(amending);
  const { controlPointId, name, correctiveAction } = point.controlPoint;
  const verdicts = previewEndOf(point, lot);
  const what = `${name} finished`;
  const save = () =>
    recording.save(
      { stageEndId: recording.id, lotId: lot.lotId, controlPointId, takenAt: takenAt.at(), ...amendsOf(amending) },
      `${what}, lot ${lot.code}`,
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
      title={amending ? `Correct the end of ${name}` : `Finish: ${name}`}
      onClose={onClose}
      closeLabel={amending ? undefined : 'Not yet'}
      actions={
        <Button look={isSafe ? 'primary' : 'plain'} busy={recording.busy} onClick={() => void save()}>
          {amending ? 'Correct it' : isSafe ? 'It is finished' : 'Finish all the same'}
        </Button>
      }
    >
      {!amending && <Circumstances takenAt={takenAt} />}
      <Stack>
        {amending && <DateTimeField label="When was it finished?" zone={zone} value={takenAt.value} onChange={takenAt.setValue} />}
        <p>From then on no more readings are waited for, and each limit is judged over the whole stage:</p>
        {verdicts.map((verdict, index) => (
          <VerdictWords key={index} verdict={tell(verdict, verdict.on)} />
        ))}
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
