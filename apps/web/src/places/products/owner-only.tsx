import { useShop } from '../../api/use-shop';
import { useSay } from '../../ui/voice';

export function OwnerOnly() {
  const say = useSay('products');
  const { name } = useShop();
  return <p>{say('owner-writes', { name })}</p>;
}
