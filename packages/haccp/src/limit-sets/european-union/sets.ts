import type { LimitSet } from '../limit-set';
import { hygieneRows } from './hygiene';
import { nitriteAfter, nitriteBefore } from './nitrite';

const jurisdiction = 'European Union';

/** Nitrite changed for meat from 9 October 2025: other figures, counted as the ion. */
export const europeanSets: readonly LimitSet[] = [
  {
    id: 'european-union-2008',
    jurisdiction,
    title: 'European Union, nitrite until 8 October 2025',
    edition: 'until 8 October 2025',
    validFrom: '2008',
    rows: [...hygieneRows, ...nitriteBefore],
  },
  {
    id: 'european-union-2025',
    jurisdiction,
    title: 'European Union',
    edition: 'from 9 October 2025',
    validFrom: '2025-10-09',
    replaces: 'european-union-2008',
    rows: [...hygieneRows, ...nitriteAfter],
  },
];
