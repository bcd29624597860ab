import { codeOf } from '@larderbook/messages';
import type { Verdict } from '@larderbook/haccp';
import { percentFigure } from '../../../ui/percent-figure';
import { Status } from '../../../ui/status';
import css from './formula.module.css';
import type { Restricted } from './restricted';
import { useLimits, useTell } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';

type Seen = { restricted: Restricted };

export function PpmOf({ restricted, holds }: Seen & { holds: number | undefined }) {
  const say = useSay('formulas');
  const sayLimits = useSay('limits');
  const { tell } = useTell();
  const { alone, substance, isAlone, verdict } = restricted;
  return (
    <span className={css.words}>
      <span>
        <strong>{tell(alone).measured}</strong>
        {sayLimits(codeOf('substance', substance))}
      </span>
      {holds !== undefined && <span className={css.small}>{say('it-holds', { percent: percentFigure(holds) })}</span>}
      {!isAlone && <span>{say('with-the-others', { ppm: tell(verdict).measured })}</span>}
    </span>
  );
}

/** The limit stands as its source prints it. */
export function LimitBeside({ restricted: { limit } }: Seen) {
  const say = useSay('formulas');
  const { sayLimit } = useLimits();
  return (
    <span className={css.words}>
      <span>{sayLimit(limit)}</span>
      <span className={css.small}>
        {limit.source.confirmed ? limit.source.citation : say('unconfirmed', { citation: limit.source.citation })}
      </span>
    </span>
  );
}

/** A formula is no measurement: it is within its limit or it is not. */
export function Within({ restricted: { verdict } }: Seen) {
  const say = useSay('formulas');
  const { margin } = useTell().tell(verdict);
  return <Status state={verdict.kind} word={say(wordOf(verdict))} margin={margin} />;
}

function wordOf({ kind, finding }: Verdict) {
  if (kind === 'met') return 'within';
  if (kind === 'missed') return 'above-the-most';
  return finding.startsWith('ppm-below') ? 'below-the-least' : 'cannot-be-judged';
}
