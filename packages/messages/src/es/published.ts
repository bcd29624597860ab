import type { Words } from '../say';
import { canada } from './published/canada';
import { european } from './published/european';
import { ingredients } from './published/ingredients';
import { inspected } from './published/inspected';
import { kingdom } from './published/kingdom';
import { leastForGrowth } from './published/least-for-growth';
import { poultryTables } from './published/poultry-tables';
import { retail } from './published/retail';
import { southern } from './published/southern';

export const published: Words = {
  ...inspected,
  ...poultryTables,
  ...ingredients,
  ...leastForGrowth,
  ...retail,
  ...canada,
  ...kingdom,
  ...european,
  ...southern,
};
