import type { LimitRowShown } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';

import css from './limits.module.css';
import { useSay } from '../../../ui/voice';
import { codeOf, type Value } from '@larderbook/messages';

export function LimitRow({ row }: { row: LimitRowShown }) {
  const say = useSay('calculators');
  const { title, says, table, paragraph, force, known, source, validFrom, validUntil, conditions, note, usedBy } = row;
  return (
    <li className={css.row}>
      <h3>{title}</h3>
      <p className={css.figure}>
        {says.map((line) => (
          <span key={line}>{line}</span>
        ))}
      </p>
      {table.length > 3 && (
        <details className={css.table}>
          <summary>{say('all-rows', { count: table.length })}</summary>
          <ul>
            {table.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      <p className={css.small}>
        {source.url ? (
          <a href={source.url} rel="noopener noreferrer" target="_blank">
            {source.citation}
          </a>
        ) : (
          source.citation
        )}
        {source.edition && !source.citation.includes(source.edition) && `, ${source.edition}`}
        {paragraph && !source.citation.includes(paragraph) && `, ${paragraph}`} · {say(codeOf('force', force))}
        {` · ${validUntil === undefined ? say('counts-since', { from: dateOf(validFrom) }) : say('counts-between', { from: dateOf(validFrom), until: dateOf(validUntil) })}`}
        {!source.confirmed && <strong> · {say('not-confirmed', { known: say(codeOf('known', known)) })}</strong>}
      </p>
      {conditions.length > 0 && <p className={css.small}>{say('only', { conditions: conditions.join('; ') })}</p>}
      {note && <p className={css.small}>{note}</p>}
      {usedBy.length > 0 && (
        <p className={css.small}>
          {say('in-force-in')}{' '}
          {usedBy.map(({ planId, title: plan }, index) => (
            <span key={planId}>
              {index > 0 && ', '}
              <Link to="/plans/$planId" params={{ planId }}>
                {plan}
              </Link>
            </span>
          ))}
        </p>
      )}
    </li>
  );
}

/** Of some figures only the year is known. */
const dateOf = (from: string): Value => (/^\d{4}-\d\d-\d\d$/.test(from) ? { day: from } : from);
