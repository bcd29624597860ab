import { ledgerHead, verifyLedger, type ReplyOf } from '@larderbook/contracts';
import { codedText } from '@larderbook/messages';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useSend } from '../../api/use-send';
import { Button } from '../../ui/button';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { Row, Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { useFigures, useSay, useSpoken } from '../../ui/voice';
import { hashInGroups } from './hash-in-groups';
import css from './ledger-check.module.css';

/** The head is to be compared with what is printed on a paper. */
export function LedgerCheck() {
  const say = useSay('papers');
  const figures = useFigures();
  const { data, error, refetch } = useQuery(ask(ledgerHead, {}));
  const { send, busy, problem, reply } = useSend(verifyLedger);
  return (
    <Stack>
      <p>{say('chain-explained')}</p>
      {data?.head && (
        <div className={css.head}>
          <p>
            <strong>{say('head', { seq: figures.number(data.head.seq) })}</strong>
          </p>
          <code className={css.hash}>{hashInGroups(data.head.hash)}</code>
        </div>
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      <Row>
        <Button look="primary" busy={busy && say('verifying')} onClick={() => send({})}>
          {say('verify')}
        </Button>
        <LinkButton to="/shop/ledger">{say('lines-and-export')}</LinkButton>
      </Row>
      <div role="status">{reply && !busy && <Result result={reply} />}</div>
      {problem !== undefined && <Problem error={problem} />}
    </Stack>
  );
}

function Result({ result: { sound, entries, records, breaks, broken } }: { result: ReplyOf<typeof verifyLedger> }) {
  const say = useSay('papers');
  const told = useSpoken('ledger-breaks');
  const figures = useFigures();
  const [first] = breaks;
  if (sound) {
    return <Status size="large" state="met" word={say('sound')} margin={say('computed-again', { lines: entries, records })} />;
  }
  return (
    <Status
      size="large"
      state="missed"
      word={first ? say('broken-at', { seq: figures.number(first.seq) }) : say('broken')}
      margin={first && [codedText(told, first.because), broken > 1 && say('more-breaks', { more: broken - 1 })].filter(Boolean).join(' ')}
    />
  );
}
