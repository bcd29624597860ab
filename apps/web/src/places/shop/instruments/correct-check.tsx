import { recordCalibration } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { useVoiding } from '../../../outbox/use-voiding';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { FormDialog } from '../../../ui/form-dialog';
import { KeptDialog } from '../../../ui/kept-dialog';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { Columns } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { useSay } from '../../../ui/voice';
import type { CheckMethod, Instrument } from './check-method';

type Check = NonNullable<Instrument['lastCheck']>;

/** What was measured since the check is flagged anew. */
export function CorrectCheck({ instrument, check, onClose }: { instrument: Instrument; check: Check; onClose: () => void }) {
  const say = useSay('instruments');
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const { instrumentId, name, unit } = instrument;
  const recording = useRecording(recordCalibration);
  const voiding = useVoiding('calibration', check.rowId, say('check-of', { name }));
  const [reason, setReason] = useState('');
  const [expected, setExpected] = useState(String(check.expected));
  const [observed, setObserved] = useState(String(check.observed));
  const [takenAt, setTakenAt] = useState(check.made.at);
  const saved = recording.saved ?? voiding.saved;
  const errors = { ...recording.refused?.fields, ...voiding.refused?.fields };
  const refused = recording.refused ?? voiding.refused;
  const save = async () => {
    const corrected = await recording.save(
      {
        ...{ calibrationId: recording.id, instrumentId, method: check.method as CheckMethod, action: check.action },
        ...{ expected: numberOf(expected) ?? NaN, observed: numberOf(observed) ?? NaN, takenAt, amends: check.rowId, reason },
      },
      say('check-of-corrected', { name }),
    );
    if (corrected) await voiding.dropRefused();
  };
  const strike = async () => {
    if (await voiding.strike(reason)) await recording.dropRefused();
  };
  if (saved) return <KeptDialog title={name} state={saved.state} recorded={say('check-saved')} onClose={onClose} />;
  return (
    <FormDialog
      title={say('correct-check-of', { name })}
      errors={errors}
      problem={refused && { title: refused.words }}
      busy={recording.busy}
      instead={
        <Button busy={voiding.busy} onClick={() => void strike()}>
          {sayShared('void')}
        </Button>
      }
      onSave={() => void save()}
      onClose={onClose}
    >
      <TextArea label={say('why')} hint={say('stays-struck')} maxLength={2000} value={reason} onChange={setReason} error={errors.reason} />
      <Columns>
        <NumberField
          label={say('should-show')}
          unit={unit}
          belowZero
          decimals={3}
          value={expected}
          onChange={setExpected}
          error={errors.expected}
        />
        <NumberField
          label={say('showed')}
          unit={unit}
          belowZero
          decimals={3}
          value={observed}
          onChange={setObserved}
          error={errors.observed}
        />
        <DateTimeField label={say('checked')} zone={zone} value={takenAt} onChange={setTakenAt} error={errors.takenAt} />
      </Columns>
    </FormDialog>
  );
}
