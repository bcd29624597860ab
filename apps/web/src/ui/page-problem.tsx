import { EmptyState } from './empty-state';
import { LinkButton } from './link-button';
import { PageHeader } from './page-header';
import { Problem } from './problem';
import { isMissing, readProblem } from './read-problem';
import { Stack } from './stack';
import { useSay } from './voice';

type PageProblemProps = { error: unknown; onRetry: () => void };

/** Instead of a page: what it is about does not exist, which leads back to Today, or it could not be fetched. */
export function PageProblem({ error, onRetry }: PageProblemProps) {
  const say = useSay('shared');
  if (!isMissing(error)) {
    return (
      <Stack>
        <PageHeader title="This page could not be shown" />
        <Problem error={error} onRetry={onRetry} />
      </Stack>
    );
  }
  const { detail, fields } = readProblem(error, say);
  return (
    <Stack>
      <PageHeader title="Not found" />
      <EmptyState
        title={detail && fields.length === 0 ? detail : 'There is nothing under this address.'}
        action={<LinkButton to="/">Go to Today</LinkButton>}
      >
        <p>The link may be old or mistyped. Nothing in the records has changed.</p>
      </EmptyState>
    </Stack>
  );
}
