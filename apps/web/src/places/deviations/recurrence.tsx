import type { Deviation } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import css from './deviations.module.css';

/** Earlier deviations of the same control point, each with the way to it. */
export function Recurrence({ recurrence }: Pick<Deviation, 'recurrence'>) {
  const { zone } = useShop();
  if (recurrence.length === 0) return null;
  return (
    <div className={css.recurrence}>
      <p>
        <strong>
          {recurrence.length === 1 ? 'This happened once before' : `This happened ${recurrence.length} times before`} in 90 days.
        </strong>
      </p>
      <ul>
        {recurrence.map(({ deviationId, number, openedAt, code, description }) => (
          <li key={deviationId}>
            <Link to="/deviations/$deviationId" params={{ deviationId }} className={css.earlier}>
              Deviation {number}, <Moment at={openedAt} zone={zone} />, {code}
            </Link>
            {description}
          </li>
        ))}
      </ul>
    </div>
  );
}
