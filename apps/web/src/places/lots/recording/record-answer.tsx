import { asksForHumidity, recordReading, recordsMoment, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { isOfKind, type HumidityKept } from '@larderbook/haccp';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { previewAnswer } from '../preview/preview-value';
import { amendsOf, type Amending } from './amending';
import { Circumstances } from './circumstances';
import { HumidityFields } from './humidity-fields';
import { Preview } from './preview';
import css from './recording.module.css';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';

type RecordAnswerProps = { lot: Lot; point: ControlPointOnLot; amending?: Amending; onClose: () => void };

export function RecordAnswer({ lot, point: { controlPoint }, amending, onClose }: RecordAnswerProps) {
  const say = useSay('lot-forms');
  const sayShared = useSay('shared');
  const recording = useRecording(recordReading);
  const takenAt = useTakenAt(amending);
  const isMoment = recordsMoment(controlPoint);
  const [answer, setAnswer] = useState<boolean | undefined>(isMoment || undefined);
  const [seen, setSeen] = useState('');
  const [humidity, setHumidity] = useState<HumidityKept>();
  const lacksValues = asksForHumidity(controlPoint) && answer === true && humidity === undefined;
  const verdicts = previewAnswer(controlPoint, answer === undefined ? undefined : { holds: answer, seen });
  const point = controlPoint.name;
  const what = isMoment ? point : say(answer ? 'answered-yes' : 'answered-no', { point });
  const save = () =>
    answer !== undefined &&
    recording.save(
      {
        readingId: recording.id,
        lotId: lot.lotId,
        controlPointId: controlPoint.controlPointId,
        entered: { answer, seen, humidity: answer ? humidity : undefined },
        takenAt: takenAt.toRecord(),
        ...amendsOf(amending),
      },
      say('what-in-lot', { what, lot: lot.code }),
    );

  const { name, correctiveAction } = controlPoint;
  if (recording.saved) {
    return (
      <SavedDialog
        title={name}
        what={what}
        saved={recording.saved}
        preview={verdicts}
        limits={controlPoint.limits}
        correctiveAction={correctiveAction}
        onClose={onClose}
      />
    );
  }
  return (
    <Dialog
      title={controlPoint.name}
      onClose={onClose}
      actions={
        answer !== undefined &&
        !lacksValues && (
          <Button look="primary" busy={recording.busy} onClick={() => void save()}>
            {sayShared('save')}
          </Button>
        )
      }
    >
      <Circumstances takenAt={takenAt} />
      <Stack>
        <Statements limits={controlPoint.limits} />
        {!isMoment && <Answers answer={answer} onAnswer={setAnswer} />}
        {asksForHumidity(controlPoint) && answer && <HumidityFields onChange={setHumidity} />}
        {answer !== undefined && !isMoment && (
          <TextArea label={say('what-seen')} hint={controlPoint.monitoring.how} maxLength={400} value={seen} onChange={setSeen} />
        )}
        {answer !== undefined && <Preview verdicts={verdicts} />}
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}

/** Letters. A longer statement is set in the size of text, so that its answers stay in sight. */
const LONG = 160;

function Statements({ limits }: Pick<ControlPointOnLot['controlPoint'], 'limits'>) {
  const { sayName } = useLimits();
  return limits.map(
    ({ limitId, limit }) =>
      isOfKind(limit, 'attestation') && (
        <p key={limitId} className={css.statement} data-long={limit.statement.length > LONG || undefined}>
          {sayName(limit.statement)}
        </p>
      ),
  );
}

function Answers({ answer, onAnswer }: { answer: boolean | undefined; onAnswer: (answer: boolean) => void }) {
  const say = useSay('lot-forms');
  return (
    <div className={css.answers}>
      <button type="button" className={css.answer} aria-pressed={answer === true} onClick={() => onAnswer(true)}>
        {say('yes')}
      </button>
      <button type="button" className={css.answer} aria-pressed={answer === false} onClick={() => onAnswer(false)}>
        {say('no')}
      </button>
    </div>
  );
}
