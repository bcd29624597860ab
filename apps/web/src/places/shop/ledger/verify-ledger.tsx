import { verifyLedger, type ReplyOf } from '@larderbook/contracts';
import { codedText } from '@larderbook/messages';
import { useSend } from '../../../api/use-send';
import { Button } from '../../../ui/button';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { useFigures, useSay, useSpoken } from '../../../ui/voice';

/** Recomputes the whole chain and every record's digest. */
export function VerifyLedger() {
  const say = useSay('shop');
  const { send, busy, problem, reply } = useSend(verifyLedger);
  return (
    <Stack gap="near">
      <Row>
        <Button look="primary" busy={busy && say('verifying')} onClick={() => send({})}>
          {say('verify')}
        </Button>
        <div role="status">{reply && !busy && <Result result={reply} />}</div>
      </Row>
      {problem !== undefined && <Problem error={problem} />}
    </Stack>
  );
}

function Result({ result: { sound, entries, records, breaks, broken } }: { result: ReplyOf<typeof verifyLedger> }) {
  const say = useSay('shop');
  const { number } = useFigures();
  const told = useSpoken('ledger-breaks');
  const counted = say('counted', { entries, records });
  const [first] = breaks;
  if (sound) return <Status state="met" word={say('sound')} margin={counted} size="large" />;
  return (
    <Status
      state="missed"
      word={first ? say('broken-at', { line: number(first.seq) }) : say('broken')}
      margin={
        first ? [codedText(told, first.because), broken > 1 && say('more-breaks', { more: broken - 1 })].filter(Boolean).join(' ') : counted
      }
      size="large"
    />
  );
}
