import { sayPercent, type Verdict } from '@larderbook/haccp';
import { Status } from '../../../ui/status';
import css from './formula.module.css';
import type { Restricted } from './restricted';

type Seen = { restricted: Restricted };

/** The ppm that the percentage of a line gives. */
export function PpmOf({ restricted, holds }: Seen & { holds: number | undefined }) {
  const { ppm, substance, isAlone, verdict } = restricted;
  return (
    <span className={css.words}>
      <span>
        <strong>{ppm}</strong> {substance}
      </span>
      {holds !== undefined && <span className={css.small}>it holds {sayPercent(holds)}</span>}
      {!isAlone && <span>{verdict.measured} with the others that hold it</span>}
    </span>
  );
}

/** The limit as its source prints it, and the source. */
export function LimitBeside({ restricted: { limit, verdict } }: Seen) {
  return (
    <span className={css.words}>
      <span>{verdict.limit}</span>
      <span className={css.small}>
        {limit.source.citation}
        {!limit.source.confirmed && '; not confirmed in the source itself'}
      </span>
    </span>
  );
}

/** A formula is no measurement: it is within its limit or it is not. */
export function Within({ restricted: { verdict } }: Seen) {
  return <Status state={verdict.kind} word={wordOf(verdict)} margin={verdict.margin} />;
}

function wordOf({ kind, margin }: Verdict): string {
  if (kind === 'met') return 'Within';
  if (kind === 'missed') return 'Above the most allowed';
  return margin ? 'Below the least asked for' : 'Cannot be judged yet';
}
