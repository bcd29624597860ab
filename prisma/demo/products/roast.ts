import { chill } from '../curves';
import type { CookedProduct } from './demo-product';

export const roast: CookedProduct = {
  fields: {
    name: 'Peppered roast beef',
    code: 'RST',
    process: 'roast',
    species: 'beef',
    productClass: 'roast beef',
    storage: 'Keep refrigerated at or below 40 °F',
    useByDays: 14,
  },
  expectedYieldPercent: 80,
  meat: [['round', 100]],
  ingredients: [['salt', 1], ['pepper', 0.6], ['garlic', 0.1]],
  trimmedPart: 0.94,
  cook: [
    [0, 41], [20, 53.4], [40, 66.2], [60, 79.4], [80, 92.2], [100, 104.6], [120, 116], [140, 126.4], [155, 133.6],
    [170, 139.8], [180, 143.4], [188, 145.8], [192, 146.6], [196, 147.2], [200, 147.6],
  ],
  chill: chill({ from: 146, around: 29, perMinute: 0.0155, every: 10, until: 38.6 }),
  chillTooSlow: chill({ from: 146, around: 33, perMinute: 0.0062, every: 15, until: 39.4 }),
  package: { value: 2, unit: 'lb' },
};
