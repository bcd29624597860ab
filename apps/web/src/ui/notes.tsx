import css from './notes.module.css';

/** Sentences to bear in mind, each by itself. */
export function Notes({ notes }: { notes: readonly string[] }) {
  return <ul className={css.notes}>{notes.map((note) => <li key={note}>{note}</li>)}</ul>;
}

/** Where a figure comes from. */
export type NamedSource = { citation: string; edition: string; confirmed: boolean; url?: string };

/** Where the figures come from; one that was not read in its source itself says so. */
export function SourceList({ sources }: { sources: readonly NamedSource[] }) {
  return (
    <ul className={css.notes}>
      {sources.map(({ citation, edition, confirmed, url }) => (
        <li key={citation}>
          {url ? <a href={url} rel="noopener noreferrer" target="_blank">{citation}</a> : citation}
          {edition && `, ${edition}`}
          {!confirmed && <strong> — not confirmed in the source itself</strong>}
        </li>
      ))}
    </ul>
  );
}
