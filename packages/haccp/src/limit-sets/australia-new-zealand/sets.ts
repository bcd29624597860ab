import type { LimitSet } from '../limit-set';
import { cookingAndCoolingRows } from './cooking-and-cooling';
import { keepingRows } from './keeping';

/** Chapters 3 and 4 of the code are Australia's alone; additives are shared. The country is a condition of each row. */
export const southernSets: readonly LimitSet[] = [
  {
    id: 'australia-new-zealand-2026',
    jurisdiction: 'Australia and New Zealand',
    title: 'Australia and New Zealand',
    edition: 'as read in 2026',
    validFrom: '2026',
    rows: [...cookingAndCoolingRows, ...keepingRows],
  },
];
