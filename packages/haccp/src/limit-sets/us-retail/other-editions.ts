import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import { attest, from, held } from '../write-row';
import { foodCode2013, foodCode2026 } from './works';

/** The rows that were looked up in the edition of 2026; the others of that edition were not read. */
export const rowsOf2026: readonly LimitRow[] = [
  from(foodCode2026, 'cooking')(
    'roast',
    'Whole roasts',
    '3-401.11(B)(1)',
    held([
      [both(130, 54.4), '112m'],
      [both(145, 62.8), '4m'],
    ]),
    { isPartial: true, note: 'Two rows were looked up and are unchanged; the others were not.' },
  ),
  from(foodCode2026, 'cooling')(
    'cooling-shallow',
    'Uncovered shallow cooling',
    '3-501.15',
    attest('The food cools uncovered in a layer of at most 2 in (5 cm).'),
  ),
];

/** Where it differs from the later editions, as remembered. */
export const rowsOf2013: readonly LimitRow[] = [
  from(foodCode2013, 'cooking')(
    'cook-comminuted',
    'Comminuted or non-intact meat',
    '3-401.11(A)(2)',
    held([
      [both(145, 63), '3m'],
      [both(150, 66), '60s'],
      [both(155, 68), '15s'],
      [both(158, 70), '0s'],
    ]),
  ),
  from(foodCode2013, 'cooking')(
    'cook-poultry',
    'Poultry, wild game, stuffed food',
    '3-401.11(A)(3)',
    held([[both(165, 74), '15s']]),
  ),
];
