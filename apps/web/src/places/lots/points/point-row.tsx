import type { ControlPointOnLot } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { StateMark } from '../../../ui/status';
import { useNow } from '../../../ui/time-left';
import { useTapGuard } from '../../../ui/use-tap-guard';
import css from './point-row.module.css';
import { useTell } from '../../../ui/use-tell';
import { sayPoint } from './say-point';
import { useSay } from '../../../ui/voice';

type PointRowProps = { lotId: string; points: ControlPointOnLot[]; onOpen?: (point: ControlPointOnLot) => void };

export function PointRow({ lotId, points, onOpen }: PointRowProps) {
  const say = useSay('lots');
  const now = useNow();
  return (
    <ul className={css.row} aria-label={say('control-points')}>
      {points.map((point) => (
        <PointTile key={point.controlPoint.controlPointId} lotId={lotId} point={point} now={now} onOpen={onOpen} />
      ))}
    </ul>
  );
}

function PointTile({
  lotId,
  point,
  now,
  onOpen,
}: {
  lotId: string;
  point: ControlPointOnLot;
  now: number;
  onOpen?: (point: ControlPointOnLot) => void;
}) {
  const press = useTapGuard<HTMLButtonElement>(() => onOpen?.(point));
  const say = useSay('lots');
  const { state, words } = sayPoint(point, now, say, useSay('shared'), useTell().tell);
  return (
    <li>
      <button type="button" className={css.tile} data-state={state} disabled={!onOpen} onClick={press}>
        {state === 'not-started' ? <i className={css.open} aria-hidden="true" /> : <StateMark state={state} />}
        <span>
          <span className={css.name}>{point.controlPoint.name}</span>
          <span className={css.words}>{words}</span>
        </span>
      </button>
      {point.stands !== 'not-started' && (
        <Link
          className={css.judged}
          to="/lots/$lotId/explanations/$controlPointId"
          params={{ lotId, controlPointId: point.controlPoint.controlPointId }}
          aria-label={say('how-point-judged', { point: point.controlPoint.name })}
        >
          {say('how-judged')}
        </Link>
      )}
    </li>
  );
}
