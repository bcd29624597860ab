import { isUnconfirmed, type Source } from '@larderbook/haccp';
import css from './notes.module.css';
import { useLimits } from './use-tell';
import { useSay } from './voice';

export function Notes({ notes }: { notes: readonly string[] }) {
  return (
    <ul className={css.notes}>
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}

/** A source that nobody has read the figure in says so. */
export function SourceList({ sources }: { sources: readonly Source[] }) {
  const say = useSay('explaining');
  const { saySupport } = useLimits();
  return (
    <ul className={css.notes}>
      {sources.map((source) => (
        <li key={source.citation}>
          {source.url ? (
            <a href={source.url} rel="noopener noreferrer" target="_blank">
              {source.citation}
            </a>
          ) : (
            source.citation
          )}
          {source.edition && `, ${source.edition}`}
          {isUnconfirmed(source) && <strong> — {say('not-confirmed')}</strong>}
          {saySupport(source).map((says) => `. ${says}`)}
        </li>
      ))}
    </ul>
  );
}
