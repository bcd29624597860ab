import { listLimitSets, rowsToTake, type OwnLimitRow } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { Button } from '../../../ui/button';
import { CheckField } from '../../../ui/check-field';
import { Dialog } from '../../../ui/dialog';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { FindField } from '../../../ui/find-field';
import { foundByWords } from '../../../ui/found-by-words';
import { Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useShop } from '../../../api/use-shop';
import css from './own-limits.module.css';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import type { SayOf } from '@larderbook/messages';

type TakeDialogProps = {
  /** Ids of figures that the edition has already. */
  taken: ReadonlySet<string>;
  onTake: (rows: OwnLimitRow[]) => void;
  onClose: () => void;
};

/** Each figure keeps its source and its conditions. */
export function TakeDialog({ taken, onTake, onClose }: TakeDialogProps) {
  const say = useSay('own-limits');
  const sets = useQuery(ask(listLimitSets, {}));
  const [set, setSet] = useState('');
  const rows = useQuery({ ...ask(rowsToTake, { set }), enabled: set !== '' });
  const [chosen, setChosen] = useState<OwnLimitRow[]>([]);
  const choose = (next: string) => {
    setSet(next);
    setChosen([]);
  };
  const toggle = (row: OwnLimitRow, isIn: boolean) =>
    setChosen(isIn ? [...chosen, row] : chosen.filter(({ rowId }) => rowId !== row.rowId));
  const failed = [sets, ...(set ? [rows] : [])].find(({ data, error }) => error && !data);
  return (
    <Dialog
      title={say('take-figures')}
      onClose={onClose}
      actions={
        chosen.length > 0 && (
          <Button look="primary" onClick={() => onTake(chosen)}>
            {say('take-these', { count: chosen.length })}
          </Button>
        )
      }
    >
      <Stack>
        {failed && <Problem error={failed.error} onRetry={() => void failed.refetch()} />}
        <FindField
          label={say('set')}
          value={set}
          onChange={choose}
          choices={(sets.data?.sets ?? []).map(({ setId, title, edition }) => ({
            value: setId,
            name: title.includes(edition) ? title : `${title}, ${edition}`,
          }))}
        />
        {set !== '' && !rows.data && !failed && <Loading />}
        {rows.data && <Offered rows={rows.data.rows.filter(({ rowId }) => !taken.has(rowId))} chosen={chosen} onToggle={toggle} />}
      </Stack>
    </Dialog>
  );
}

type OfferedProps = { rows: OwnLimitRow[]; chosen: OwnLimitRow[]; onToggle: (row: OwnLimitRow, isIn: boolean) => void };

function Offered({ rows, chosen, onToggle }: OfferedProps) {
  const say = useSay('own-limits');
  const { degrees } = useShop();
  const { sayLimit, sayName } = useLimits();
  const [sought, setSought] = useState('');
  const told = rows.map((row) => {
    const [title, detail] = [sayName(row.title), [sayLimit(row.limit, degrees), ...sourceWords(row.limit.source, say)].join(' · ')];
    return { row, title, detail, name: `${title} ${detail}` };
  });
  const found = foundByWords(told, sought);
  return (
    <>
      <TextField
        label={say('find-figure')}
        optional
        hint={say('not-in-yours', { found: found.length, count: rows.length })}
        value={sought}
        autoComplete="off"
        onChange={setSought}
      />
      <ul className={css.offer}>
        {found.map(({ row, title, detail }) => (
          <li key={row.rowId}>
            <CheckField label={title} checked={chosen.includes(row)} onChange={(isIn) => onToggle(row, isIn)} detail={detail} />
          </li>
        ))}
      </ul>
    </>
  );
}

const sourceWords = ({ citation, confirmed }: OwnLimitRow['limit']['source'], say: SayOf<'own-limits'>): string[] =>
  confirmed ? [citation] : [citation, say('not-confirmed')];
