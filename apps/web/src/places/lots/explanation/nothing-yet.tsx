import type { PointExplained } from '@larderbook/contracts';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { useSay } from '../../../ui/voice';

export function NothingYet({ explained: { asked, lotId } }: { explained: PointExplained }) {
  const say = useSay('judging');
  return (
    <EmptyState
      title={say('nothing-yet')}
      action={
        <LinkButton to="/lots/$lotId" params={{ lotId }}>
          {say('to-the-lot')}
        </LinkButton>
      }
    >
      <p>{say('will-be-judged')}</p>
      <ul>
        {asked.map(({ limitId, said, source }) => (
          <li key={limitId}>{say('limit-from', { limit: said, source: source.citation })}</li>
        ))}
      </ul>
    </EmptyState>
  );
}
