import { findTrace } from '@larderbook/contracts';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextField } from '../../ui/text-field';
import { FoundList } from './found-list';

/** One field for a bad day: whatever is printed on the package or the delivery note finds where to trace from. */
export function TracePage() {
  const asked: { words?: unknown } = useSearch({ strict: false });
  const words = asked.words === undefined ? '' : String(asked.words);
  const navigate = useNavigate();
  const find = (next: string) => void navigate({ to: '/trace', search: next ? { words: next } : {}, replace: true });
  return (
    <Stack>
      <PageHeader title="Trace" under="From any delivery, lot or package: everything behind it and everything after it." />
      <TextField
        label="Find"
        hint="A code, a supplier’s lot, a supplier, an item or a product; every word you type must occur."
        type="search"
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        maxLength={80}
        autoFocus
        value={words}
        onChange={find}
      />
      <Found words={useDeferredValue(words.trim())} />
    </Stack>
  );
}

function Found({ words }: { words: string }) {
  const { data, error, refetch } = useQuery({
    ...ask(findTrace, { words }),
    enabled: words !== '',
    placeholderData: keepPreviousData,
  });
  if (words === '') return <p>Type as much as you can read of a package’s code or of the supplier’s lot number.</p>;
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  return <FoundList {...data} words={words} />;
}
