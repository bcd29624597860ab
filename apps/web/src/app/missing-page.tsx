import { EmptyState } from '../ui/empty-state';
import { LinkButton } from '../ui/link-button';
import { PageHeader } from '../ui/page-header';
import { Stack } from '../ui/stack';

/** No page under this address. */
export function MissingPage() {
  return (
    <Stack>
      <PageHeader title="No such page" />
      <EmptyState title="There is no page under this address." action={<LinkButton to="/">Go to Today</LinkButton>}>
        <p>The link may be old or mistyped. Nothing in the records has changed.</p>
      </EmptyState>
    </Stack>
  );
}
