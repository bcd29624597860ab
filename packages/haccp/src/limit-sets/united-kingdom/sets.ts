import type { LimitSet } from '../limit-set';
import { cookingAndCoolingRows } from './cooking-and-cooling';
import { keepingRows } from './keeping';

/**
 * Shops and caterers; an approved plant uses the figures of Regulation (EC) 853/2004. Nations are conditions of rows.
 */
export const kingdomSets: readonly LimitSet[] = [
  {
    id: 'united-kingdom-2026',
    jurisdiction: 'United Kingdom and Ireland',
    title: 'United Kingdom and Ireland',
    edition: 'as read in 2026',
    validFrom: '2026',
    rows: [...cookingAndCoolingRows, ...keepingRows],
  },
];
