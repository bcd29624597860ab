import { listLots, standings, type LotHead, type ReplyOf, type Standing } from '@larderbook/contracts';
import { useState } from 'react';
import { useEarlier } from '../../api/earlier';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { Filter } from '../../ui/filter';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { LotRow } from './lot-row';
import css from './lots-page.module.css';

type Shown = Standing | 'all';
const shown: readonly Shown[] = ['all', ...standings];

export function LotsPage() {
  const say = useSay('lots');
  const { mayRecord } = useShop();
  const [standing, setStanding] = useState<Shown>('all');
  const start = (
    <LinkButton look="primary" to="/lots/new">
      {say('start-a-lot')}
    </LinkButton>
  );
  return (
    <Stack>
      <PageHeader
        title={say('title')}
        actions={
          <>
            <LinkButton to="/deviations">{say('deviations')}</LinkButton>
            {mayRecord && start}
          </>
        }
      />
      <Filter
        label={say('show-those')}
        choices={shown.map((value) => ({ value, name: say(`standing-${value}`) }))}
        chosen={standing}
        onChoose={setStanding}
      />
      <LotList key={standing} standing={standing} start={mayRecord ? start : undefined} />
    </Stack>
  );
}

function LotList({ standing, start }: { standing: Shown; start?: React.ReactNode }) {
  const say = useSay('lots');
  const sayShared = useSay('shared');
  const { rows: lots, error, refetch, isFetching, more } = useEarlier(listLots, { standing }, reading);
  if (!lots) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  if (lots.length === 0) {
    return (
      <EmptyState title={say(`none-${standing}`)} action={start}>
        {say('own-sheet')}
      </EmptyState>
    );
  }
  return (
    <>
      <ol className={css.lots} aria-label={say('newest-first')}>
        {lots.map((lot) => (
          <LotRow key={lot.lotId} lot={lot} />
        ))}
      </ol>
      {more && (
        <Button wide busy={isFetching && sayShared('loading')} onClick={more}>
          {say('earlier')}
        </Button>
      )}
    </>
  );
}

const reading = {
  rowsOf: ({ lots }: ReplyOf<typeof listLots>) => lots,
  idOf: ({ lotId }: LotHead) => lotId,
  at: ({ startedAt }: LotHead) => startedAt,
};
