import type { Source } from '@larderbook/haccp';
import { Section } from '../../../ui/section';
import css from './working-view.module.css';

/** Where the figures come from; one that was not read in its source itself says so. */
export function Sources({ sources }: { sources: readonly Source[] }) {
  return (
    <Section title="Source">
      <ul className={css.notes}>
        {sources.map(({ citation, edition, confirmed, url }) => (
          <li key={citation}>
            {url ? <a href={url} rel="noopener noreferrer" target="_blank">{citation}</a> : citation}
            {edition && `, ${edition}`}
            {!confirmed && <strong> — not confirmed in the source itself</strong>}
          </li>
        ))}
      </ul>
    </Section>
  );
}
