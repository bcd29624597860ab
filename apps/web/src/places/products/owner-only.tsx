import { useShop } from '../../api/use-shop';
import { useSay } from '../../ui/voice';

/** Says to anyone but the owner why there is nothing to press here. */
export function OwnerOnly() {
  const say = useSay('products');
  const { name } = useShop();
  return <p>{say('owner-writes', { name })}</p>;
}
