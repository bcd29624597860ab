import type { LimitRowShown } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { dateWords } from '../../../ui/moment';
import css from './limits.module.css';

/** One figure: what it is about, what is printed, where, on what conditions, and which plans carry it. */
export function LimitRow({ row }: { row: LimitRowShown }) {
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
          <summary>All {table.length} rows of the table</summary>
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
        {paragraph && !source.citation.includes(paragraph) && `, ${paragraph}`} · {force}
        {` · counts from ${sayDate(validFrom)}${validUntil === undefined ? '' : ` until ${sayDate(validUntil)}`}`}
        {!source.confirmed && <strong> · not confirmed: {known}</strong>}
      </p>
      {conditions.length > 0 && <p className={css.small}>Only {conditions.join('; ')}</p>}
      {note && <p className={css.small}>{note}</p>}
      {usedBy.length > 0 && (
        <p className={css.small}>
          In force in{' '}
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

/** A day as everywhere in the book; of some figures only the year is known. */
const sayDate = (from: string): string => (/^\d{4}-\d\d-\d\d$/.test(from) ? dateWords(from) : from);
