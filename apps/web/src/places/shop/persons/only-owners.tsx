import { listPeople } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { useShop } from '../../../api/use-shop';

/** Tells whoever is no owner why there is no button, and whom to ask. Nothing for an owner. */
export function OnlyOwners({ may }: { may: string }) {
  const { isOwner } = useShop();
  const { data } = useQuery({ ...ask(listPeople, {}), enabled: !isOwner });
  if (isOwner) return null;
  const owners = (data?.people ?? []).filter(({ roles }) => roles.includes('owner')).map(({ name }) => name);
  return (
    <p>
      Only an owner may {may}
      {owners.length > 0 && `: ask ${owners.join(' or ')}`}.
    </p>
  );
}
