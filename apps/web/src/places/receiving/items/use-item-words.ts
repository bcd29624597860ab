import { codeOf } from '@larderbook/messages';
import { useShop } from '../../../api/use-shop';
import { useFigures, useSay } from '../../../ui/voice';
import type { Item } from '../known';
import { receivingRange } from './receiving-range';

export function useItemWords() {
  const say = useSay('items');
  const sayLimits = useSay('limits');
  const { number } = useFigures();
  const { degrees } = useShop();
  return {
    /** "Meat, pork" */
    kind: ({ kind, species }: Pick<Item, 'kind' | 'species'>): string => {
      const named = say(codeOf('kind', kind));
      return species && species !== 'none' ? say('kind-of-species', { kind: named, species: say(codeOf('species', species)) }) : named;
    },
    /** "6.25 % sodium nitrite", or nothing. */
    substance: ({ substance, fractionPercent }: Pick<Item, 'substance' | 'fractionPercent'>): string =>
      substance
        ? say('percent-substance', { percent: number(fractionPercent ?? 0), substance: sayLimits(codeOf('substance', substance)) })
        : '',
    allergen: (allergen: Item['allergens'][number]): string => say(codeOf('allergen', allergen)),
    receiving: (item: Pick<Item, 'receivingLimit'>): string => receivingRange(item, degrees),
  };
}
