import type { LimitSet } from '../limit-set';
import { cookingAndCoolingRows } from './cooking-and-cooling';
import { keepingRows } from './keeping';

/** Federal rules, their archived manual, and the provinces that were read: Ontario and Québec. */
export const canadianSets: readonly LimitSet[] = [
  {
    id: 'canada-2026',
    jurisdiction: 'Canada',
    title: 'Canada',
    edition: 'regulations as of 2025 and 2026',
    validFrom: '2026-06-05',
    rows: [...cookingAndCoolingRows, ...keepingRows],
  },
];
