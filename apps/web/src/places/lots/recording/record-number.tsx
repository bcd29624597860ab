import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { ForecastWords } from '../../../ui/forecast-words';
import { Keypad } from '../../../ui/keypad';
import { useNow } from '../../../ui/time-left';
import { useFigures, useSay } from '../../../ui/voice';
import { isRunning } from '../next/next-thing';
import { enteredValue } from '../say/entered';
import type { Amending } from './amending';
import { Circumstances } from './circumstances';
import { LimitsOfPoint } from './limits-of-point';
import { Preview } from './preview';
import { ProbeChoice } from './probe-choice';
import { isDegrees, measuredIn } from './reading-unit';
import css from './recording.module.css';
import { SavedDialog } from './saved-dialog';
import { useReadingForm } from './use-reading-form';

type RecordNumberProps = {
  lot: Lot;
  point: ControlPointOnLot;
  amending?: Amending;
  onFinish?: () => void;
  onClose: () => void;
};

export function RecordNumber({ lot, point, amending, onFinish, onClose }: RecordNumberProps) {
  const say = useSay('lot-forms');
  const form = useReadingForm(lot, point, amending);
  const { recording, takenAt, instrument, probe, entered } = form;
  const { controlPoint } = point;
  if (recording.saved) return <SavedReading form={form} point={point} amending={amending} onClose={onClose} />;
  return (
    <Dialog
      title={controlPoint.name}
      onClose={onClose}
      actions={onFinish && isRunning(point) && <Button onClick={onFinish}>{say('it-is-finished-now')}</Button>}
    >
      <div className={css.entry}>
        <Circumstances takenAt={takenAt} instrument={instrument}>
          <ProbeChoice point={controlPoint} probe={probe} onChoose={form.chooseProbe} />
        </Circumstances>
        <p className={css.what}>{form.isAround ? say('not-in-product', { probe }) : controlPoint.monitoring.what}</p>
        <Keypad
          label={say(`measured-${measuredIn(entered.unit)}`)}
          units={form.units}
          entered={entered}
          onChange={form.setEntered}
          belowZero={isDegrees(entered.unit)}
          limit={form.isAround ? say('no-limit') : <LimitsOfPoint point={controlPoint} unit={entered.unit === '°C' ? '°C' : '°F'} />}
          previous={<Before point={point} probe={probe} />}
          preview={<Preview verdicts={form.verdicts} />}
          ask={form.ask}
          error={recording.refused?.words}
          busy={recording.busy}
          onSave={(typed) => void form.save(typed)}
        />
      </div>
    </Dialog>
  );
}

function Before({ point, probe }: { point: ControlPointOnLot; probe: string }) {
  const say = useSay('lot-forms');
  const sayEntry = useSay('entries');
  const figures = useFigures();
  const now = useNow(60_000);
  const last = point.readings.findLast((reading) => reading.amendedBy === undefined && reading.probe === probe);
  if (!last) return say('nothing-yet');
  return say('value-at', { value: enteredValue(last.entered, sayEntry, figures), when: { at: last.made.at, today: now } });
}

type SavedReadingProps = {
  form: ReturnType<typeof useReadingForm>;
  point: ControlPointOnLot;
  amending?: Amending;
  onClose: () => void;
};

function SavedReading({ form, point: { controlPoint }, amending, onClose }: SavedReadingProps) {
  const say = useSay('lot-forms');
  const { zone, degrees } = useShop();
  const { recording, what, verdicts, forecast, another } = form;
  if (!recording.saved) return null;
  return (
    <SavedDialog
      title={controlPoint.name}
      what={what}
      saved={recording.saved}
      preview={verdicts}
      limits={controlPoint.limits}
      forecast={forecast && <ForecastWords forecast={forecast} zone={zone} degrees={degrees} />}
      isPressing={forecast?.state === 'at risk' || forecast?.state === 'will miss'}
      correctiveAction={controlPoint.correctiveAction}
      onClose={onClose}
    >
      {controlPoint.takenAs === 'curve' && !amending && (
        <Button look="primary" onClick={another}>
          {say('another-reading')}
        </Button>
      )}
    </SavedDialog>
  );
}
