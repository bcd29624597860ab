import { findTrace, listLots } from '@larderbook/contracts';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useDeferredValue, useState } from 'react';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextField } from '../../ui/text-field';
import { LotRecordList } from './lot-record-list';

/** Everything about one lot on paper: type its code, or take one of the newest. */
export function LotRecords() {
  const [typed, setTyped] = useState('');
  const words = useDeferredValue(typed.trim());
  return (
    <Stack>
      <TextField
        label="Lot code"
        hint="Part of it is enough; the name of the product does too."
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
  const { data, error, refetch } = useQuery(ask(listLots, { standing: 'all' }));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const lots = data.lots
    .slice(0, newest)
    .map(({ lotId, code, productName, startedAt }) => ({ lotId, code, what: productName, at: startedAt }));
  return <LotRecordList caption="Newest lots" lots={lots} empty="There is no lot yet." />;
}

function Found({ words }: { words: string }) {
  const { data, error, refetch } = useQuery({ ...ask(findTrace, { words }), placeholderData: keepPreviousData });
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const lots = data.found.filter(({ kind }) => kind === 'lot').map(({ id, code, what, at }) => ({ lotId: id, code, what, at }));
  return <LotRecordList caption="Lots found" lots={lots} empty={`No lot goes by “${words}”.`} />;
}
