import { EmptyState } from './empty-state';
import { LinkButton } from './link-button';
import { PageHeader } from './page-header';
import { Stack } from './stack';
import { useSay } from './voice';

export function NoSuchPage({ because }: { because?: string }) {
  const say = useSay('shared');
  return (
    <Stack>
      <PageHeader title={say('no-such-page')} />
      <EmptyState title={because ?? say('nothing-here')} action={<LinkButton to="/">{say('to-today')}</LinkButton>}>
        <p>{say('link-may-be-old')}</p>
      </EmptyState>
    </Stack>
  );
}
