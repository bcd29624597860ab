import { recordCalibration } from '@larderbook/contracts';
import { judgeCheck, sayRead } from '@larderbook/haccp';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Keypad, type Entered } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { VerdictWords } from '../../../ui/verdict-words';
import { isTemperature, methodsFor, methodWords, shouldRead, usualShown, type CheckMethod, type Instrument } from './check-method';
import { KnownValue } from './known-value';

/** A check of an instrument against a known value: one number, judged at once; one that failed asks what was done with it. */
export function CheckInstrument({ instrument, onClose }: { instrument: Instrument; onClose: () => void }) {
  const { instrumentId, name, unit, tolerance } = instrument;
  const [usual = 'reference instrument'] = methodsFor(instrument);
  const recording = useRecording(recordCalibration);
  const [method, setMethod] = useState<CheckMethod>(usual);
  const [expected, setExpected] = useState(() => shouldRead(usual, unit));
  const [entered, setEntered] = useState<Entered>({ text: '', unit });
  const [missed, setMissed] = useState(false);
  const [action, setAction] = useState('');
  const [unsaid, setUnsaid] = useState(false);

  const observed = numberOf(entered.text);
  const verdict = expected === undefined || observed === undefined ? undefined : judgeCheck({ expected, observed, tolerance, unit });
  const record = () => {
    if (expected === undefined || observed === undefined) return;
    void recording.save(
      { calibrationId: recording.id, instrumentId, method, expected, observed, action, takenAt: new Date().toISOString() },
      `Check of ${name}: ${sayRead({ value: observed, unit })} at ${sayRead({ value: expected, unit })}`,
    );
  };
  const takeMissed = () => {
    setUnsaid(action.trim().length < 3);
    if (action.trim().length >= 3) record();
  };

  if (recording.saved && verdict) {
    return (
      <Dialog title={name} closeLabel="Done" onClose={onClose}>
        <Stack>
          <p>
            {recording.saved.state === 'sent'
              ? 'The check is recorded.'
              : 'Kept on this device. It is sent when the connection is back; until then this is a preview.'}
          </p>
          <VerdictWords size="large" verdict={verdict} />
        </Stack>
      </Dialog>
    );
  }
  if (missed && verdict) {
    return (
      <Dialog title={name} closeLabel="Record nothing" onClose={onClose}>
        <Stack>
          <VerdictWords size="large" verdict={verdict} />
          <TextArea
            label="What was done with it?"
            hint="Adjusted and checked again, or taken out of use. What was measured with it since its last good check has to be looked at again."
            maxLength={400}
            value={action}
            error={unsaid ? 'Say what was done with it.' : undefined}
            onChange={setAction}
          />
          {recording.refused && <Problem error={{ title: recording.refused.words }} />}
          <Row>
            <Button look="primary" busy={recording.busy} onClick={takeMissed}>
              Record the check
            </Button>
            <Button onClick={() => setMissed(false)}>Read it again</Button>
          </Row>
        </Stack>
      </Dialog>
    );
  }
  return (
    <Dialog title={`Check ${name}`} closeLabel="Record nothing" onClose={onClose}>
      <Stack>
        <KnownValue
          instrument={instrument}
          method={method}
          expected={expected}
          onExpected={setExpected}
          onMethod={(next) => {
            setMethod(next);
            setExpected(shouldRead(next, unit));
          }}
        />
        {expected === undefined ? (
          <p>Then the keypad comes, for what it shows. {methodWords[method].how}</p>
        ) : (
          <Keypad
            label="It shows"
            units={[usualShown(instrument, expected)]}
            entered={entered}
            onChange={setEntered}
            belowZero={isTemperature(unit)}
            limit={`${expected} ± ${tolerance} ${unit}`}
            previous={instrument.lastCheck?.verdict.measured}
            preview={verdict && <VerdictWords verdict={verdict} />}
            error={recording.refused?.words}
            busy={recording.busy}
            saveLabel="Record the check"
            onSave={() => (verdict?.kind === 'met' ? record() : setMissed(true))}
          />
        )}
      </Stack>
    </Dialog>
  );
}
