import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { sayEditionInUse } from './editions';
import type { Where } from './where-fields';

/** The edition in use by its title, once the sets are here. */
export function EditionInUse({ where }: { where: Where }) {
  const { data } = useQuery(ask(listLimitSets, {}));
  return <>{data ? (sayEditionInUse(data.sets, where) ?? 'not known to this version') : '…'}</>;
}
