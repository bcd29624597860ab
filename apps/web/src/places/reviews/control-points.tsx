import { ofProduct, type ControlPointOnLot } from '@larderbook/contracts';
import { isUnconfirmed, type CriticalLimit } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import { useShop } from '../../api/use-shop';
import { Status } from '../../ui/status';
import { statusOf } from '../../ui/status-of';
import { useLimits, useTell } from '../../ui/use-tell';
import { useSay } from '../../ui/voice';
import css from './control-points.module.css';

export function ControlPoints({ points }: { points: ControlPointOnLot[] }) {
  const say = useSay('reviews');
  if (points.length === 0) return <p>{say('no-control-points')}</p>;
  return (
    <ol className={css.points}>
      {points.map((point) => (
        <Point key={point.controlPoint.controlPointId} point={point} />
      ))}
    </ol>
  );
}

function Point({ point }: { point: ControlPointOnLot }) {
  const say = useSay('reviews');
  const { controlPoint, judged } = point;
  return (
    <li className={css.point}>
      <div>
        <h3 className={css.name}>{controlPoint.name}</h3>
        <p className={css.small}>{say(controlPoint.kind)}</p>
        <p className={css.small}>{readingsOf(point, say)}</p>
      </div>
      <ul className={css.limits}>
        {controlPoint.limits.map(({ limitId, limit }) => (
          <Limit key={limitId} limit={limit} verdicts={judged.filter((each) => each.limitId === limitId)} point={point} />
        ))}
      </ul>
    </li>
  );
}

type LimitProps = { limit: CriticalLimit; verdicts: ControlPointOnLot['judged']; point: ControlPointOnLot };

function Limit({ limit, verdicts, point }: LimitProps) {
  const say = useSay('reviews');
  const { degrees } = useShop();
  const { tell } = useTell();
  const { sayLimit } = useLimits();
  const told = verdicts.map(({ verdict }) => tell(verdict, limit));
  return (
    <li className={css.limit}>
      <div>
        <p>{told[0]?.limit ?? sayLimit(limit, degrees)}</p>
        <p className={css.small}>
          {isUnconfirmed(limit.source) ? say('not-confirmed', { source: limit.source.citation }) : limit.source.citation}
        </p>
      </div>
      <div className={css.verdicts}>
        {told.map((verdict) => (
          <div key={`${verdict.probe} ${verdict.measured}`} className={css.verdict}>
            <Status {...statusOf(verdict)} margin={verdict.margin} />
            <p className={css.small}>{verdict.kind === 'met' ? measured(verdict) : verdict.because}</p>
          </div>
        ))}
        {verdicts.length === 0 && <Status state="undetermined" word={say('nothing-recorded')} />}
        {verdicts.some(({ verdict }) => verdict.kind !== 'met') && point.settled && <p className={css.settled}>{say('settled')}</p>}
      </div>
    </li>
  );
}

const measured = ({ measured, probe }: { measured: string; probe?: string }) => (probe ? `${probe}: ${measured}` : measured);

function readingsOf({ controlPoint, readings }: ControlPointOnLot, say: SayOf<'reviews'>): string {
  if (controlPoint.takenAs === 'weighings') return say('by-weighings');
  const count = ofProduct(controlPoint, readings).filter(({ amendedBy }) => amendedBy === undefined).length;
  return say('readings', { count });
}
