import type { ProductLimits } from '@larderbook/contracts';
import { sayEdition } from './say-edition';

type ForThisProductProps = { limits: ProductLimits; count: number };

/** Over the limits that are offered first: by which class and edition they were found, or why there are none. */
export function ForThisProduct({ limits: { productClass, jurisdiction, set }, count }: ForThisProductProps) {
  if (!jurisdiction) return <p>Whose limits count here was not said, so none comes first. It is said under Establishment.</p>;
  if (!set) return <p>The edition in use is not known to this version, so none comes first.</p>;
  if (!productClass) return <p>The class of the product was not said, so none comes first.</p>;
  const none = set.isPartial ? ' nothing of this kind was read in it' : ' it has nothing of this kind';
  return (
    <p>
      <strong>
        For {productClass}, by {sayEdition(set)}:
      </strong>
      {count === 0 && none}
    </p>
  );
}
