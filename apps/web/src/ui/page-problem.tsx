import { NoSuchPage } from './no-such-page';
import { PageHeader } from './page-header';
import { Problem } from './problem';
import { isMissing, readProblem } from './read-problem';
import { Stack } from './stack';
import { useSay } from './voice';

type PageProblemProps = { error: unknown; onRetry: () => void };

export function PageProblem({ error, onRetry }: PageProblemProps) {
  const say = useSay('shared');
  if (isMissing(error)) {
    const { detail, fields } = readProblem(error, say);
    return <NoSuchPage because={fields.length === 0 ? detail : undefined} />;
  }
  return (
    <Stack>
      <PageHeader title={say('page-not-shown')} />
      <Problem error={error} onRetry={onRetry} />
    </Stack>
  );
}
