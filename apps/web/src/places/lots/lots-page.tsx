import { listLots, standings, standingWords, type LotHead, type Standing } from '@larderbook/contracts';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { Filter } from '../../ui/filter';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { LotRow } from './lot-row';
import css from './lots-page.module.css';
import { capital } from './say/say-standing';

type Shown = Standing | 'all';
const filters = [{ value: 'all' as Shown, name: 'All' }, ...standings.map((value) => ({ value, name: capital(standingWords[value]) }))];

/** Every lot and where it stands, newest first. */
export function LotsPage() {
  const { mayRecord } = useShop();
  const [standing, setStanding] = useState<Shown>('all');
  const start = (
    <LinkButton look="primary" to="/lots/new">
      Start a lot
    </LinkButton>
  );
  return (
    <Stack>
      <PageHeader
        title="Lots"
        actions={
          <>
            <LinkButton to="/deviations">Deviations</LinkButton>
            {mayRecord && start}
          </>
        }
      />
      <Filter label="Show lots that are" choices={filters} chosen={standing} onChoose={setStanding} />
      <LotList key={standing} standing={standing} start={mayRecord ? start : undefined} />
    </Stack>
  );
}

function LotList({ standing, start }: { standing: Shown; start?: React.ReactNode }) {
  const [before, setBefore] = useState<string>();
  const [earlier, setEarlier] = useState<LotHead[]>([]);
  const { data, error, refetch, isFetching } = useQuery({
    ...ask(listLots, { standing, before }),
    placeholderData: keepPreviousData,
  });
  if (error && !data) return <Problem error={error} onRetry={() => void refetch()} />;
  if (!data) return <Loading />;
  const lots = [...earlier, ...data.lots].filter((lot, i, all) => all.findIndex(({ lotId }) => lotId === lot.lotId) === i);
  if (lots.length === 0) {
    const title = standing === 'all' ? 'No lot yet' : `No lot is ${standingWords[standing]}`;
    return (
      <EmptyState title={title} action={start}>
        Each lot gets a sheet of its own, from the meat that goes in to the packages that leave.
      </EmptyState>
    );
  }
  const more = () => {
    setEarlier(lots);
    setBefore(lots.at(-1)?.startedAt);
  };
  return (
    <>
      <ol className={css.lots} aria-label="Lots, newest first">
        {lots.map((lot) => (
          <LotRow key={lot.lotId} lot={lot} />
        ))}
      </ol>
      {data.more && (
        <Button wide busy={isFetching && 'Fetching earlier lots…'} onClick={more}>
          Earlier lots
        </Button>
      )}
    </>
  );
}
