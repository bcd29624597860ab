import { listLots, showToday } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { useNow } from '../../ui/time-left';
import { useClock, useSay } from '../../ui/voice';
import { FirstThings } from './first-things-list';
import { PossibleRecalls } from './possible-recalls';
import { ShopSheet } from './shop-sheet';
import { isQuiet, todaySections } from './today-sections';

/** Other tablets record too. */
const lookAgainMs = 20_000;
const aMinute = 60_000;

export function TodayPage() {
  const { zone, mayRecord } = useShop();
  const say = useSay('today');
  const clock = useClock(zone);
  const now = useNow(aMinute);
  const { data, error, refetch } = useQuery({ ...ask(showToday, {}), refetchInterval: lookAgainMs });
  const { data: lots } = useQuery(ask(listLots, { standing: 'all' }));
  const actions = mayRecord && (
    <>
      <LinkButton to="/receiving/new">{say('record-delivery')}</LinkButton>
      <LinkButton look="primary" to="/lots/new">
        {say('start-lot')}
      </LinkButton>
    </>
  );
  const isNew = lots?.lots.length === 0;
  const sections = data && todaySections(data);
  const isKnown = sections && (lots || !isQuiet(sections)); // a quiet day and a new shop look alike until the lots are there
  return (
    <Stack>
      <PageHeader title={say('title')} over={clock.weekDay(now)} actions={!isNew && actions} />
      {!isKnown && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {sections && <PossibleRecalls deviations={sections.recalls} />}
      {isNew && <FirstThings />}
      {sections && !isQuiet(sections) && <ShopSheet sections={sections} />}
      {sections && isQuiet(sections) && lots && !isNew && <EmptyState title={say('nothing-waits')}>{say('nothing-waits-hint')}</EmptyState>}
    </Stack>
  );
}
