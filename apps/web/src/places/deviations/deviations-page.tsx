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
import { useAccount } from '../../ui/use-account';
import { useSay } from '../../ui/voice';
import { about } from './about';
import css from './deviations.module.css';
import { nextPart } from './next-part';
import { leftToDecide } from './weights';

type Shown = 'only' | 'all';
const filters: { value: Shown; code: 'open' | 'all' }[] = [
  { value: 'only', code: 'open' },
  { value: 'all', code: 'all' },
];

export function DeviationsPage() {
  const say = useSay('deviations');
  const [open, setOpen] = useState<Shown>('only');
  const { data, error, refetch } = useQuery(ask(listDeviations, { open }));
  return (
    <Stack>
      <PageHeader title={say('title')} under={say('intro')} />
      <Filter
        label={say('show-those')}
        choices={filters.map(({ value, code }) => ({ value, name: say(code) }))}
        chosen={open}
        onChoose={setOpen}
      />
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {data && <DeviationList deviations={data.deviations} isOpen={open === 'only'} />}
    </Stack>
  );
}

function DeviationList({ deviations, isOpen }: { deviations: Deviation[]; isOpen: boolean }) {
  const say = useSay('deviations');
  if (deviations.length === 0) {
    return <EmptyState title={say(isOpen ? 'none-open' : 'none-yet')}>{say('opens-by-itself')}</EmptyState>;
  }
  return (
    <ol className={css.list} aria-label={say('title')}>
      {deviations.map((deviation) => (
        <DeviationRow key={deviation.deviationId} deviation={deviation} />
      ))}
    </ol>
  );
}

function DeviationRow({ deviation }: { deviation: Deviation }) {
  const say = useSay('deviations');
  const tell = useAccount();
  const { zone } = useShop();
  const { deviationId, number, description, open, opened, shippedAlready } = deviation;
  const next = nextPart(deviation);
  const { weight, all } = leftToDecide(deviation);
  return (
    <li>
      <Link to="/deviations/$deviationId" params={{ deviationId }} className={css.row} data-open={open || undefined}>
        <span>
          <strong>{say('numbered', { number: String(number) })}</strong>
          <span className={css.small}>
            <Moment at={opened.at} zone={zone} />
          </span>
        </span>
        <span>
          {tell(description)}
          <span className={css.small}>{about(deviation, say)}</span>
        </span>
        <span>
          <Status state={open ? 'missed' : 'met'} word={say(open ? 'open' : 'closed')} />
          {next !== 'done' && <span className={css.small}>{say(`next-${next}`)}</span>}
          {open && !deviation.covered && (
            <span className={css.small}>{all ? say('weight-of-to-decide', { weight, all }) : say('weight-to-decide', { weight })}</span>
          )}
          {shippedAlready && <strong className={css.small}>{say('product-has-left')}</strong>}
        </span>
      </Link>
    </li>
  );
}
