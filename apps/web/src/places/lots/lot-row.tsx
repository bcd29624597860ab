import { standingWords, type LotHead } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../api/use-shop';
import { dayWords, timeWords } from '../../ui/moment';
import { Status } from '../../ui/status';
import { timeLeft, useNow, writeTimeLeft } from '../../ui/time-left';
import { useSay } from '../../ui/voice';
import css from './lots-page.module.css';
import { capital, standingState } from './say/say-standing';

/** One lot in the list: its code, its product, where it stands and why, and the time left of what runs. */
export function LotRow({ lot }: { lot: LotHead }) {
  const { zone } = useShop();
  return (
    <li className={css.lot} data-standing={lot.standing}>
      <Link to="/lots/$lotId" params={{ lotId: lot.lotId }} className={css.link}>
        <span className={css.name}>
          <strong>{lot.code}</strong> {lot.productName}
          <span className={css.small}>
            {dayWords(lot.startedAt, zone)}, {timeWords(lot.startedAt, zone)}
          </span>
        </span>
        <span className={css.stands}>
          <Status state={standingState[lot.standing]} word={capital(standingWords[lot.standing])} />
          <span className={css.small}>{lot.because}</span>
        </span>
        <span className={css.running}>{lot.running && <Running running={lot.running} warned={lot.warning?.forecast.state} />}</span>
      </Link>
    </li>
  );
}

type RunningProps = { running: NonNullable<LotHead['running']>; warned?: string };

function Running({ running: { name, bound, deadline }, warned }: RunningProps) {
  const now = useNow();
  const say = useSay('shared');
  const left = deadline === undefined ? undefined : timeLeft(deadline, now);
  return (
    <>
      <strong className={css.left} data-late={left?.late || undefined}>
        {left ? writeTimeLeft(left, say) : say('running')}
        {warned && `, ${warned}`}
      </strong>
      <span className={css.small}>
        {name}: {bound}
      </span>
    </>
  );
}
