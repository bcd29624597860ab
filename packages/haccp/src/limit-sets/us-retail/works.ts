import type { Work } from '../write-row';

/** The Food Code binds where a jurisdiction has adopted it, in the edition adopted. */
export const foodCode2022: Work = {
  citation: 'FDA Food Code',
  edition: '2022',
  url: 'https://www.fda.gov/food/fda-food-code/food-code-2022',
  validFrom: '2022',
  force: 'law',
  known: 'read in the source',
};

/** The roast rows that were looked up in the edition of 2026; the others of that edition were not read. */
export const foodCode2026: Work = {
  ...foodCode2022,
  edition: '2026',
  url: 'https://www.fda.gov/food/fda-food-code/food-code-2026',
  validFrom: '2026-09-17',
  known: 'second hand',
};

export const foodCode2013: Work = {
  ...foodCode2022,
  edition: '2013',
  url: undefined,
  validFrom: '2013',
  known: 'from memory',
};
