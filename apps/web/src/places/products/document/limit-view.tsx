import { isUnconfirmed, kindOf, type CriticalLimit } from '@larderbook/haccp';
import { Status } from '../../../ui/status';
import { useShop } from '../../../api/use-shop';
import css from './control-point-view.module.css';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';

/** The figure stands as its source prints it; one nobody has confirmed says so. */
export function LimitView({ limit }: { limit: CriticalLimit }) {
  const say = useSay('plans');
  const { sayConditions, sayLimit, sayRow, saySupport } = useLimits();
  const { degrees } = useShop();
  const { citation, edition, url } = limit.source;
  const rows = kindOf(limit).rows(limit);
  const said = [citation, edition].filter(Boolean).join(', ');
  return (
    <div className={css.limit}>
      <p className={css.figure}>{sayLimit(limit, degrees)}</p>
      {rows.length > 3 && (
        <details className={css.rows}>
          <summary>{say('all-rows', { count: rows.length })}</summary>
          <ul>
            {rows.map((row, i) => (
              <li key={i}>{sayRow(row, degrees)}</li>
            ))}
          </ul>
        </details>
      )}
      {'authority' in limit && <p className={css.small}>{say('supported-by', { authority: limit.authority })}</p>}
      {sayConditions(limit.conditions).map((says) => (
        <p key={says}>{says}</p>
      ))}
      {'longestGapSeconds' in limit && (
        <p className={css.small}>{say('longest-gap', { time: { value: String(limit.longestGapSeconds * 1000), unit: 'ms' } })}</p>
      )}
      <p className={css.small}>
        {url ? (
          <a href={url} target="_blank" rel="noopener">
            {said}
          </a>
        ) : (
          said
        )}
      </p>
      {saySupport(limit.source).map((says) => (
        <p key={says}>{says}</p>
      ))}
      {isUnconfirmed(limit.source) && <Status state="undetermined" word={say('unconfirmed')} />}
    </div>
  );
}
