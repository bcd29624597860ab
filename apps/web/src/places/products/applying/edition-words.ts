import type { ProductLimits } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

type SetOf = NonNullable<ProductLimits['set']>;

export const editionWords = ({ title, edition }: Pick<SetOf, 'title' | 'edition'>, say: SayOf<'product-limits'>): string =>
  title.includes(edition) ? title : say('edition-of', { title, edition });
