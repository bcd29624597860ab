import type { ErrorComponentProps } from '@tanstack/react-router';
import { PageHeader } from '../ui/page-header';
import { Problem } from '../ui/problem';
import { Stack } from '../ui/stack';
import { useSay } from '../ui/voice';
import css from './root.module.css';

export function FailedPage({ error, reset }: ErrorComponentProps) {
  const say = useSay('shared');
  return (
    <Stack>
      <PageHeader title={say('page-not-shown')} />
      <Problem error={error} onRetry={reset} />
    </Stack>
  );
}

/** For when the shell itself broke. */
export function FailedBook(props: ErrorComponentProps) {
  return (
    <main className={css.door}>
      <FailedPage {...props} />
    </main>
  );
}
