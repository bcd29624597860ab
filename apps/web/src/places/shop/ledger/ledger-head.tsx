import css from './ledger.module.css';

/** The newest line of the chain; its hash stands at the foot of every paper. */
export function LedgerHead({ head: { seq, hash } }: { head: { seq: number; hash: string } }) {
  return (
    <p className={css.head}>
      <strong>Head of the chain: line {seq.toLocaleString('en-US')}</strong>
      <code className={css.hash}>{hash}</code>
    </p>
  );
}
