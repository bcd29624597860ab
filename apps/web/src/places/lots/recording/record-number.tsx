import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { ForecastWords } from '../../../ui/forecast-words';
import { Keypad } from '../../../ui/keypad';
import { whenWords } from '../../../ui/moment';
import { useNow } from '../../../ui/time-left';
import { isRunning } from '../next/next-thing';
import { sayEntered } from '../say/say-entered';
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

/** One reading at a control point: a number, its unit, and at once how it is judged. */
export function RecordNumber({ lot, point, amending, onFinish, onClose }: RecordNumberProps) {
  const form = useReadingForm(lot, point, amending);
  const { recording, takenAt, instrument, probe, entered } = form;
  const { controlPoint } = point;
  if (recording.saved) return <SavedReading form={form} point={point} amending={amending} onClose={onClose} />;
  return (
    <Dialog
      title={controlPoint.name}
      onClose={onClose}
      actions={onFinish && isRunning(point) && <Button onClick={onFinish}>It is finished…</Button>}
    >
      <div className={css.entry}>
        <Circumstances takenAt={takenAt} instrument={instrument}>
          <ProbeChoice point={controlPoint} probe={probe} onChoose={form.chooseProbe} />
        </Circumstances>
        <p className={css.what}>{form.isAround ? `${probe}, not in the product.` : controlPoint.monitoring.what}</p>
        <Keypad
          label={measuredIn(entered.unit)}
          units={form.units}
          entered={entered}
          onChange={form.setEntered}
          belowZero={isDegrees(entered.unit)}
          limit={
            form.isAround ? (
              'none: it tells when the core will be there'
            ) : (
              <LimitsOfPoint point={controlPoint} unit={entered.unit === '°C' ? '°C' : '°F'} />
            )
          }
          previous={<Before point={point} probe={probe} />}
          preview={<Preview verdicts={form.verdicts} />}
          ask={form.ask}
          error={recording.refused?.words}
          busy={recording.busy}
          onSave={(kept) => void form.save(kept)}
        />
      </div>
    </Dialog>
  );
}

function Before({ point, probe }: { point: ControlPointOnLot; probe: string }) {
  const { zone } = useShop();
  const now = useNow(60_000);
  const last = point.readings.findLast((reading) => reading.amendedBy === undefined && reading.probe === probe);
  return last ? `${sayEntered(last.entered)} at ${whenWords(last.made.at, now, zone)}` : 'nothing yet';
}

type SavedReadingProps = {
  form: ReturnType<typeof useReadingForm>;
  point: ControlPointOnLot;
  amending?: Amending;
  onClose: () => void;
};

function SavedReading({ form, point: { controlPoint }, amending, onClose }: SavedReadingProps) {
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
          Another reading
        </Button>
      )}
    </SavedDialog>
  );
}
