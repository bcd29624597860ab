import type { ErrorComponentProps } from '@tanstack/react-router';
import { PageHeader } from '../ui/page-header';
import { Problem } from '../ui/problem';
import { Stack } from '../ui/stack';

/** A page broke. What is kept on the device is untouched, and the person can try again. */
export function FailedPage({ error, reset }: ErrorComponentProps) {
  return (
    <Stack>
      <PageHeader title="This page could not be shown" />
      <Problem error={error} onRetry={reset} />
    </Stack>
  );
}
