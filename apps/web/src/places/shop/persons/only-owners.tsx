import { listPeople } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { useShop } from '../../../api/use-shop';
import { useSay } from '../../../ui/voice';

const codes = {
  change: ['only-owner-changes', 'ask-owner-to-change'],
  add: ['only-owner-adds', 'ask-owner-to-add'],
} as const;

/** Tells whoever is no owner whom to ask. */
export function OnlyOwners({ may }: { may: keyof typeof codes }) {
  const say = useSay('people');
  const { isOwner } = useShop();
  const { data } = useQuery({ ...ask(listPeople, {}), enabled: !isOwner });
  if (isOwner) return null;
  const owners = (data?.people ?? []).filter(({ roles }) => roles.includes('owner')).map(({ name }) => name);
  const [alone, withNames] = codes[may];
  return <p>{owners.length > 0 ? say(withNames, { owners }) : say(alone)}</p>;
}
