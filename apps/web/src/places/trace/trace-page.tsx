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
import { useSay } from '../../ui/voice';
import { FoundList } from './found-list';

/** Whatever is printed on the package or the delivery note finds where to trace from. */
export function TracePage() {
  const say = useSay('trace');
  const { words = '' } = useSearch({ from: '/trace' });
  const navigate = useNavigate();
  const find = (next: string) => void navigate({ to: '/trace', search: next ? { words: next } : {}, replace: true });
  return (
    <Stack>
      <PageHeader title={say('title')} under={say('intro')} />
      <TextField
        label={say('find')}
        hint={say('find-hint')}
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
  const say = useSay('trace');
  const { data, error, refetch } = useQuery({
    ...ask(findTrace, { words }),
    enabled: words !== '',
    placeholderData: keepPreviousData,
  });
  if (words === '') return <p>{say('type-to-find')}</p>;
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  return <FoundList {...data} words={words} />;
}
