import { codeOf } from '@larderbook/messages';
import type { Verdict } from '@larderbook/haccp';
import { percentFigure } from '../../../ui/percent-figure';
import { Status } from '../../../ui/status';
import css from './formula.module.css';
import type { Restricted } from './restricted';
import { useSay } from '../../../ui/voice';

type Seen = { restricted: Restricted };

/** The ppm that the percentage of a line gives. */
export function PpmOf({ restricted, holds }: Seen & { holds: number | undefined }) {
  const say = useSay('formulas');
  const sayLimits = useSay('limits');
  const { ppm, substance, isAlone, verdict } = restricted;
  return (
    <span className={css.words}>
      <span>
        <strong>{ppm}</strong>
        {sayLimits(codeOf('substance', substance))}
      </span>
      {holds !== undefined && <span className={css.small}>{say('it-holds', { percent: percentFigure(holds) })}</span>}
      {!isAlone && <span>{say('with-the-others', { ppm: verdict.measured ?? '' })}</span>}
    </span>
  );
}

/** The limit as its source prints it, and the source. */
export function LimitBeside({ restricted: { limit, verdict } }: Seen) {
  const say = useSay('formulas');
  return (
    <span className={css.words}>
      <span>{verdict.limit}</span>
      <span className={css.small}>
        {limit.source.confirmed ? limit.source.citation : say('unconfirmed', { citation: limit.source.citation })}
      </span>
    </span>
  );
}

/** A formula is no measurement: it is within its limit or it is not. */
export function Within({ restricted: { verdict } }: Seen) {
  const say = useSay('formulas');
  return <Status state={verdict.kind} word={say(wordOf(verdict))} margin={verdict.margin} />;
}

function wordOf({ kind, margin }: Verdict) {
  if (kind === 'met') return 'within';
  if (kind === 'missed') return 'above-the-most';
  return margin ? 'below-the-least' : 'cannot-be-judged';
}
