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

/** Every figure of one set, by what it is about. */
export function SetRows({ set }: { set: string }) {
  const { data, error, refetch } = useQuery(ask(showLimitSet, { set }));
  const [sought, setSought] = useState('');
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const found = matching(data.rows, sought);
  return (
    <Stack>
      {data.newer && (
        <p>
          <strong>
            A newer edition counts: {data.newer.title}, {data.newer.edition}.
          </strong>{' '}
          Plans built on this one stay as they are and are to be reassessed.
        </p>
      )}
      <TextField
        label="Find a figure"
        hint={`${found.length} of ${data.rows.length} figures`}
        value={sought}
        onChange={setSought}
        autoComplete="off"
      />
      {found.length === 0 && <EmptyState title="No figure with these words">Try fewer letters, or another set.</EmptyState>}
      {byPurpose(found).map(([purpose, rows]) => (
        <Purpose key={purpose} purpose={purpose} rows={rows} />
      ))}
    </Stack>
  );
}

function Purpose({ purpose, rows }: { purpose: string; rows: LimitRowShown[] }) {
  return (
    <Section title={purpose} aside={`${rows.length}`}>
      <ul className={css.rows}>
        {rows.map((row) => (
          <LimitRow key={row.rowId} row={row} />
        ))}
      </ul>
    </Section>
  );
}
