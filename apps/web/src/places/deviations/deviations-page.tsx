import { listDeviations, type Deviation } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { Filter } from '../../ui/filter';
import { Loading } from '../../ui/loading';
import { Moment } from '../../ui/moment';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import css from './deviations.module.css';
import { nextPart, partWords } from './next-part';
import { sayAbout } from './say-deviation';
import { sayLeftToDecide } from './weights';

type Shown = 'only' | 'all';
const filters: { value: Shown; name: string }[] = [
  { value: 'only', name: 'Open' },
  { value: 'all', name: 'All' },
];

/** Missed limits and what became of them; the open ones first. */
export function DeviationsPage() {
  const [open, setOpen] = useState<Shown>('only');
  const { data, error, refetch } = useQuery(ask(listDeviations, { open }));
  return (
    <Stack>
      <PageHeader title="Deviations" under="Missed limits, and what was done about them." />
      <Filter label="Show deviations that are" choices={filters} chosen={open} onChoose={setOpen} />
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {data && <DeviationList deviations={data.deviations} isOpen={open === 'only'} />}
    </Stack>
  );
}

function DeviationList({ deviations, isOpen }: { deviations: Deviation[]; isOpen: boolean }) {
  if (deviations.length === 0) {
    return (
      <EmptyState title={isOpen ? 'No deviation is open' : 'No deviation yet'}>
        A missed limit opens one by itself; it is closed once it is dealt with.
      </EmptyState>
    );
  }
  return (
    <ol className={css.list} aria-label="Deviations">
      {deviations.map((deviation) => (
        <DeviationRow key={deviation.deviationId} deviation={deviation} />
      ))}
    </ol>
  );
}

function DeviationRow({ deviation }: { deviation: Deviation }) {
  const { zone } = useShop();
  const { deviationId, number, description, open, opened, shippedAlready } = deviation;
  const next = nextPart(deviation);
  return (
    <li>
      <Link to="/deviations/$deviationId" params={{ deviationId }} className={css.row} data-open={open || undefined}>
        <span>
          <strong>Deviation {number}</strong>
          <span className={css.small}>
            <Moment at={opened.at} zone={zone} />
          </span>
        </span>
        <span>
          {description}
          <span className={css.small}>{sayAbout(deviation)}</span>
        </span>
        <span>
          <Status state={open ? 'missed' : 'met'} word={open ? 'Open' : 'Closed'} />
          {next !== 'done' && <span className={css.small}>next: {partWords[next].toLowerCase()}</span>}
          {open && !deviation.covered && <span className={css.small}>{sayLeftToDecide(deviation)} to decide</span>}
          {shippedAlready && <strong className={css.small}>product has left</strong>}
        </span>
      </Link>
    </li>
  );
}
