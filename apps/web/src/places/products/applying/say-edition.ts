import type { ProductLimits } from '@larderbook/contracts';

type SetOf = NonNullable<ProductLimits['set']>;

/** A set with its edition, said once. */
export const sayEdition = ({ title, edition }: Pick<SetOf, 'title' | 'edition'>): string =>
  title.includes(edition) ? title : `${title}, ${edition}`;
