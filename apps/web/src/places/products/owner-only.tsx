import { useShop } from '../../api/use-shop';

/** Says to anyone but the owner why there is nothing to press here. */
export function OwnerOnly() {
  const { name } = useShop();
  return <p>Products, formulas and plans are written by the owner. {name} may read them all.</p>;
}
