import type { LotHead } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import { Status } from '../../ui/status';
import { timeLeft, useNow, writeTimeLeft } from '../../ui/time-left';
import { useAccount } from '../../ui/use-account';
import { useTell } from '../../ui/use-tell';
import { useSay } from '../../ui/voice';
import css from './lots-page.module.css';
import { withWarning } from './say/with-warning';
import { standingState } from './standing-state';

export function LotRow({ lot }: { lot: LotHead }) {
  const say = useSay('lots');
  const tell = useAccount();
  const { zone } = useShop();
  return (
    <li className={css.lot} data-standing={lot.standing}>
      <Link to="/lots/$lotId" params={{ lotId: lot.lotId }} className={css.link}>
        <span className={css.name}>
          <strong>{lot.code}</strong> {lot.productName}
          <span className={css.small}>
            <Moment at={lot.startedAt} zone={zone} />
          </span>
        </span>
        <span className={css.stands}>
          <Status state={standingState[lot.standing]} word={say(`standing-${lot.standing}`)} />
          <span className={css.small}>{tell(lot.because)}</span>
        </span>
        <span className={css.running}>{lot.running && <Running running={lot.running} warned={lot.warning?.forecast.state} />}</span>
      </Link>
    </li>
  );
}

type RunningProps = { running: NonNullable<LotHead['running']>; warned?: NonNullable<LotHead['warning']>['forecast']['state'] };

function Running({ running: { name, bound, deadline }, warned }: RunningProps) {
  const now = useNow();
  const say = useSay('lots');
  const sayShared = useSay('shared');
  const { tellRemark } = useTell();
  const left = deadline === undefined ? undefined : timeLeft(deadline, now);
  return (
    <>
      <strong className={css.left} data-late={left?.late || undefined}>
        {withWarning(left ? writeTimeLeft(left, sayShared) : sayShared('running'), warned, say)}
      </strong>
      <span className={css.small}>{say('point-bound', { point: name, bound: tellRemark(bound) })}</span>
    </>
  );
}
