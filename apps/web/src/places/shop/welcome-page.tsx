import { firstRun } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useSearch } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { OpenDemonstration } from './demonstration/open-demonstration';
import { Doors } from './welcome/doors';
import { SetUpShop } from './welcome/set-up-shop';

export function WelcomePage() {
  const { door } = useSearch({ from: '/welcome' });
  const { data, error, refetch } = useQuery(ask(firstRun, {}));
  if (door === 'shop') return <SetUpShop />;
  if (door === 'demonstration') return <OpenDemonstration />;
  if (data) return <Doors hasShop={data.hasShop} />;
  return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
