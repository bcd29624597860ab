import { verifyLedger, type ReplyOf } from '@larderbook/contracts';
import { useSend } from '../../../api/use-send';
import { Button } from '../../../ui/button';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';

/** Recomputes the whole chain and every record's digest, and says where it breaks first. */
export function VerifyLedger() {
  const { send, busy, problem, reply } = useSend(verifyLedger);
  return (
    <Stack gap="near">
      <Row>
        <Button look="primary" busy={busy && 'Computing every line again…'} onClick={() => send({})}>
          Verify now
        </Button>
        <div role="status">{reply && !busy && <Result result={reply} />}</div>
      </Row>
      {problem !== undefined && <Problem error={problem} />}
    </Stack>
  );
}

function Result({ result: { sound, entries, records, firstBreak } }: { result: ReplyOf<typeof verifyLedger> }) {
  const counted = `${entries.toLocaleString('en-US')} lines, ${records.toLocaleString('en-US')} records`;
  if (sound) return <Status state="met" word="Sound" margin={counted} size="large" />;
  return (
    <Status
      state="missed"
      word={firstBreak ? `Broken at line ${firstBreak.seq}` : 'Broken'}
      margin={firstBreak ? firstBreak.because : counted}
      size="large"
    />
  );
}
