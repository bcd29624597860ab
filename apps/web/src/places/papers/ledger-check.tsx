import { ledgerHead, verifyLedger, type ReplyOf } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useSend } from '../../api/use-send';
import { Button } from '../../ui/button';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { Row, Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { hashInGroups } from './hash-in-groups';
import css from './ledger-check.module.css';

/**
 * The head of the chain, to compare with what is printed on a paper, and whether every record still is what was
 * recorded.
 */
export function LedgerCheck() {
  const { data, error, refetch } = useQuery(ask(ledgerHead, {}));
  const { send, busy, problem, reply } = useSend(verifyLedger);
  return (
    <Stack>
      <p>
        Every record is one line of a chain in which each line seals the one before. A record that was changed, removed or moved breaks it.
      </p>
      {data?.head && (
        <div className={css.head}>
          <p>
            <strong>Head of the chain: line {data.head.seq.toLocaleString('en-US')}</strong>
          </p>
          <code className={css.hash}>{hashInGroups(data.head.hash)}</code>
        </div>
      )}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      <Row>
        <Button look="primary" busy={busy && 'Computing every line again…'} onClick={() => send({})}>
          Verify now
        </Button>
        <LinkButton to="/shop/ledger">The lines, and their export</LinkButton>
      </Row>
      <div role="status">{reply && !busy && <Result result={reply} />}</div>
      {problem !== undefined && <Problem error={problem} />}
    </Stack>
  );
}

function Result({ result: { sound, entries, records, firstBreak } }: { result: ReplyOf<typeof verifyLedger> }) {
  const [lines, rows] = [entries.toLocaleString('en-US'), records.toLocaleString('en-US')];
  const counted = `${lines} lines and ${rows} records computed again, none altered`;
  if (sound) return <Status size="large" state="met" word="Sound" margin={counted} />;
  return (
    <Status
      size="large"
      state="missed"
      word={firstBreak ? `Broken at line ${firstBreak.seq.toLocaleString('en-US')}` : 'Broken'}
      margin={firstBreak?.because}
    />
  );
}
