import type { PointExplained } from '@larderbook/contracts';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';

/** Nothing to judge: what will be asked of it, and where to record. */
export function NothingYet({ explained: { asked, lotId } }: { explained: PointExplained }) {
  return (
    <EmptyState
      title="Nothing is recorded here yet"
      action={
        <LinkButton to="/lots/$lotId" params={{ lotId }}>
          Go to the lot
        </LinkButton>
      }
    >
      <p>It will be judged against:</p>
      <ul>
        {asked.map(({ limitId, said, source }) => (
          <li key={limitId}>
            {said} ({source.citation})
          </li>
        ))}
      </ul>
    </EmptyState>
  );
}
