import { findTrace, listLots } from '@larderbook/contracts';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useDeferredValue, useState } from 'react';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextField } from '../../ui/text-field';
import { useSay } from '../../ui/voice';
import { LotRecordList } from './lot-record-list';

export function LotRecords() {
  const say = useSay('papers');
  const [typed, setTyped] = useState('');
  const words = useDeferredValue(typed.trim());
  return (
    <Stack>
      <TextField
        label={say('lot-code')}
        hint={say('lot-code-hint')}
        type="search"
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        maxLength={80}
        value={typed}
        onChange={setTyped}
      />
      {words === '' ? <Newest /> : <Found words={words} />}
    </Stack>
  );
}

const newest = 5;

function Newest() {
  const say = useSay('papers');
  const { data, error, refetch } = useQuery(ask(listLots, { standing: 'all' }));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const lots = data.lots
    .slice(0, newest)
    .map(({ lotId, code, productName, startedAt }) => ({ lotId, code, what: productName, at: startedAt }));
  return <LotRecordList caption={say('newest-lots')} lots={lots} empty={say('no-lot')} />;
}

function Found({ words }: { words: string }) {
  const say = useSay('papers');
  const { data, error, refetch } = useQuery({ ...ask(findTrace, { words }), placeholderData: keepPreviousData });
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const lots = data.found.filter(({ kind }) => kind === 'lot').map(({ id, code, what, at }) => ({ lotId: id, code, what, at }));
  return <LotRecordList caption={say('lots-found')} lots={lots} empty={say('no-lot-found', { words })} />;
}
