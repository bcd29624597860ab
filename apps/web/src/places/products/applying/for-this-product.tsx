import type { ProductLimits } from '@larderbook/contracts';
import { editionWords } from './edition-words';
import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';

type ForThisProductProps = { limits: ProductLimits; count: number };

/** Tells by which class and edition the limits were found, or why there are none. */
export function ForThisProduct({ limits: { productClass, jurisdiction, set }, count }: ForThisProductProps) {
  const say = useSay('product-limits');
  const sayLimits = useSay('limits');
  if (!jurisdiction) return <p>{say('none-by-jurisdiction')}</p>;
  if (!set) return <p>{say('none-by-edition')}</p>;
  if (!productClass) return <p>{say('none-by-class')}</p>;

  return (
    <p>
      <strong>{say('for-class', { class: sayLimits(codeOf('class', productClass)), edition: editionWords(set, say) })}</strong>
      {count === 0 && ` ${say(set.isPartial ? 'none-read' : 'none-in-it')}`}
    </p>
  );
}
