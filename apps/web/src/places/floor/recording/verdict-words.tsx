import { RANK, type Verdict } from '@larderbook/haccp';
import { Status } from '../../../ui/status';
import css from './recording.module.css';

/** One verdict in words: its shape and margin, why, and what to do now. */
export function VerdictWords({ verdict, size = 'line' }: { verdict: Verdict; size?: 'line' | 'large' }) {
  return (
    <div className={css.verdict} data-kind={verdict.kind}>
      <Status state={verdict.running ? 'running' : verdict.kind} margin={verdict.margin} size={size} />
      <p>{verdict.because}</p>
      {verdict.next && <p className={css.next}>{verdict.next}</p>}
    </div>
  );
}

/** How what stands on the keypad would be judged: of several limits the one that governs. Only the server's verdict counts. */
export function Preview({ verdicts }: { verdicts: Verdict[] }) {
  const [governs] = [...verdicts].sort((a, b) => RANK[a.kind] - RANK[b.kind]);
  return governs ? <VerdictWords verdict={governs} /> : null;
}
