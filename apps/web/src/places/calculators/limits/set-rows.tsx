import { showLimitSet, type LimitRowShown } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { EmptyState } from '../../../ui/empty-state';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { LimitRow } from './limit-row';
import css from './limits.module.css';
import { byPurpose, matching } from './rows-by-purpose';
import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';
import { nameOfSet } from './name-of-set';

export function SetRows({ set }: { set: string }) {
  const say = useSay('calculators');
  const { data, error, refetch } = useQuery(ask(showLimitSet, { set }));
  const [sought, setSought] = useState('');
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const found = matching(data.rows, sought);
  return (
    <Stack>
      {data.newer && (
        <p>
          <strong>{say('newer-counts', { set: nameOfSet(data.newer, say) })}</strong>
          {say('plans-stay')}
        </p>
      )}
      <TextField
        label={say('find-figure')}
        hint={say('found-of', { found: found.length, count: data.rows.length })}
        value={sought}
        onChange={setSought}
        autoComplete="off"
      />
      {found.length === 0 && <EmptyState title={say('none-found')}>{say('try-fewer')}</EmptyState>}
      {byPurpose(found).map(([purpose, rows]) => (
        <Purpose key={purpose} purpose={purpose} rows={rows} />
      ))}
    </Stack>
  );
}

function Purpose({ purpose, rows }: { purpose: LimitRowShown['purpose']; rows: LimitRowShown[] }) {
  const say = useSay('limit-purposes');
  return (
    <Section title={say(codeOf('purpose', purpose))} aside={`${rows.length}`}>
      <ul className={css.rows}>
        {rows.map((row) => (
          <LimitRow key={row.rowId} row={row} />
        ))}
      </ul>
    </Section>
  );
}
