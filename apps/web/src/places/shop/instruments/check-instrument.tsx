import { recordCalibration } from '@larderbook/contracts';
import { judgeCheck, formatRead } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { Dialog } from '../../../ui/dialog';
import { Keypad, type Entered } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import { Stack } from '../../../ui/stack';
import { VerdictWords } from '../../../ui/verdict-words';
import { useTell } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { isTemperature, methodsFor, usualShown, type Instrument } from './check-method';
import { CheckSaved } from './check-saved';
import { FailedCheck } from './failed-check';
import { knownBy, KnownValue } from './known-value';

/** A check that failed asks what was done with the instrument. */
export function CheckInstrument({ instrument, onClose }: { instrument: Instrument; onClose: () => void }) {
  const say = useSay('instruments');
  const { instrumentId, name, unit, tolerance } = instrument;
  const [usual = 'reference instrument'] = methodsFor(instrument);
  const recording = useRecording(recordCalibration);
  const [known, setKnown] = useState(() => knownBy(usual, unit));
  const [entered, setEntered] = useState<Entered>({ text: '', unit });
  const [hasFailed, setFailed] = useState(false);
  const [action, setAction] = useState('');

  const { method, expected } = known;
  const observed = numberOf(entered.text);
  const { tell } = useTell();
  const judged = expected === undefined || observed === undefined ? undefined : judgeCheck({ expected, observed, tolerance, unit });
  const verdict = judged && tell(judged);
  const record = () => {
    if (expected === undefined || observed === undefined) return;
    void recording.save(
      { calibrationId: recording.id, instrumentId, method, expected, observed, action, takenAt: new Date().toISOString() },
      say('check-of-read', { name, observed: formatRead({ value: observed, unit }), expected: formatRead({ value: expected, unit }) }),
    );
  };
  if (recording.saved && verdict) return <CheckSaved name={name} state={recording.saved.state} verdict={verdict} onClose={onClose} />;
  if (hasFailed && verdict) {
    return (
      <FailedCheck
        name={name}
        verdict={verdict}
        action={action}
        saving={recording}
        onAction={setAction}
        onSave={record}
        onReadAgain={() => setFailed(false)}
        onClose={onClose}
      />
    );
  }
  return (
    <Dialog title={say('check-of', { name })} onClose={onClose}>
      <Stack>
        <KnownValue instrument={instrument} known={known} onChange={setKnown} />
        {expected === undefined ? (
          <>
            <p>{say('keypad-comes')}</p>
            <p>{say(codeOf('how', method))}</p>
          </>
        ) : (
          <Keypad
            label={say('shows')}
            units={[usualShown(instrument, expected)]}
            entered={entered}
            onChange={setEntered}
            belowZero={isTemperature(unit)}
            limit={`${expected} ± ${tolerance} ${unit}`}
            previous={instrument.lastCheck && tell(instrument.lastCheck.verdict).measured}
            preview={verdict && <VerdictWords verdict={verdict} />}
            error={recording.refused?.words}
            busy={recording.busy}
            onSave={() => (verdict?.kind === 'met' ? record() : setFailed(true))}
          />
        )}
      </Stack>
    </Dialog>
  );
}
