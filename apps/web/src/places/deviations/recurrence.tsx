import type { Deviation } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useAccount } from '../../ui/use-account';
import { useSay } from '../../ui/voice';
import css from './deviations.module.css';

export function Recurrence({ recurrence }: Pick<Deviation, 'recurrence'>) {
  const say = useSay('deviations');
  const tell = useAccount();
  if (recurrence.length === 0) return null;
  return (
    <div className={css.recurrence}>
      <p>
        <strong>{say('happened-before', { count: recurrence.length })}</strong>
      </p>
      <ul>
        {recurrence.map(({ deviationId, number, openedAt, code, description }) => (
          <li key={deviationId}>
            <Link to="/deviations/$deviationId" params={{ deviationId }} className={css.earlier}>
              {say('earlier-one', { number: String(number), when: { at: openedAt }, code })}
            </Link>
            {tell(description)}
          </li>
        ))}
      </ul>
    </div>
  );
}
