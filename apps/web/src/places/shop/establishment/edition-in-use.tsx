import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { useSay } from '../../../ui/voice';
import { editionInUse } from './editions';
import type { Where } from './where-fields';

export function EditionInUse({ where }: { where: Where }) {
  const say = useSay('shop');
  const { data } = useQuery(ask(listLimitSets, {}));
  if (!data) return <>…</>;
  const inUse = editionInUse(data.sets, where);
  if (!inUse) return <>{say('edition-unknown')}</>;
  return <>{inUse.isUsual ? say('edition-is-usual', { edition: inUse.edition }) : inUse.edition}</>;
}
