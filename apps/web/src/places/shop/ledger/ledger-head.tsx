import css from './ledger.module.css';
import { useFigures, useSay } from '../../../ui/voice';

/** The hash of the newest line stands at the foot of every paper. */
export function LedgerHead({ head: { seq, hash } }: { head: { seq: number; hash: string } }) {
  const say = useSay('shop');
  const { number } = useFigures();
  return (
    <p className={css.head}>
      <strong>{say('head', { line: number(seq) })}</strong>
      <code className={css.hash}>{hash}</code>
    </p>
  );
}
