import { productFields } from '@larderbook/contracts';
import type { z } from 'zod';
import { check } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import type { Say, WordsOf } from '@larderbook/messages';

type ProductFields = z.output<typeof productFields>;
/** Nothing is chosen until the person chooses. */
export type ProductDraft = Omit<ProductFields, 'process' | 'species' | 'useByDays'> & {
  process: ProductFields['process'] | '';
  species: ProductFields['species'] | '';
  useByDays: string;
};

export const emptyProduct: ProductDraft = { name: '', code: '', process: '', species: '', storage: '', useByDays: '' };

export const draftOf = (product: ProductFields): ProductDraft => {
  const { name, code, process, species, productClass, storage, useByDays } = product;
  return { name, code, process, species, productClass, storage, useByDays: String(useByDays) };
};

export function checkProduct(draft: ProductDraft, say: Say<WordsOf<'products'>>) {
  const { value, errors } = check(productFields, { ...draft, useByDays: numberOf(draft.useByDays) });
  if (value) return { value };
  return {
    errors: {
      ...errors,
      ...(draft.process === '' && { process: say('how-made-missing') }),
      ...(draft.species === '' && { species: say('species-missing') }),
      ...(numberOf(draft.useByDays) === undefined && { useByDays: say('days-missing') }),
    },
  };
}
