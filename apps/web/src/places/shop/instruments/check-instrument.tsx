import { recordCalibration } from '@larderbook/contracts';
import { judgeCheck, sayRead } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
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
import { useSay } from '../../../ui/voice';
import { isTemperature, methodsFor, shouldRead, usualShown, type CheckMethod, type Instrument } from './check-method';
import { KnownValue } from './known-value';

/** A check of an instrument against a known value: one number, judged at once; one that failed asks what was done with it. */
export function CheckInstrument({ instrument, onClose }: { instrument: Instrument; onClose: () => void }) {
  const say = useSay('instruments');
  const sayShared = useSay('shared');
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
      say('check-of-read', { name, observed: sayRead({ value: observed, unit }), expected: sayRead({ value: expected, unit }) }),
    );
  };
  const takeMissed = () => {
    setUnsaid(action.trim().length < 3);
    if (action.trim().length >= 3) record();
  };

  if (recording.saved && verdict) {
    return (
      <Dialog title={name} closeLabel={sayShared('done')} onClose={onClose}>
        <Stack>
          <p>{say(recording.saved.state === 'sent' ? 'check-recorded' : 'check-kept')}</p>
          <VerdictWords size="large" verdict={verdict} />
        </Stack>
      </Dialog>
    );
  }
  if (missed && verdict) {
    return (
      <Dialog title={name} onClose={onClose}>
        <Stack>
          <VerdictWords size="large" verdict={verdict} />
          <TextArea
            label={say('what-was-done')}
            hint={say('what-was-done-hint')}
            maxLength={400}
            value={action}
            error={unsaid ? say('say-what-was-done') : undefined}
            onChange={setAction}
          />
          {recording.refused && <Problem error={{ title: recording.refused.words }} />}
          <Row>
            <Button look="primary" busy={recording.busy} onClick={takeMissed}>
              {sayShared('save')}
            </Button>
            <Button onClick={() => setMissed(false)}>{say('read-again')}</Button>
          </Row>
        </Stack>
      </Dialog>
    );
  }
  return (
    <Dialog title={say('check-of', { name })} onClose={onClose}>
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
            previous={instrument.lastCheck?.verdict.measured}
            preview={verdict && <VerdictWords verdict={verdict} />}
            error={recording.refused?.words}
            busy={recording.busy}
            onSave={() => (verdict?.kind === 'met' ? record() : setMissed(true))}
          />
        )}
      </Stack>
    </Dialog>
  );
}
