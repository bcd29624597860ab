import type { CookedProduct } from './demo-product';

export const stew: CookedProduct = {
  fields: {
    name: 'Beef and barley stew',
    code: 'STW',
    process: 'cook-chill',
    species: 'beef',
    productClass: 'cook-chill dish',
    storage: 'Keep refrigerated at or below 41 °F',
    useByDays: 6,
  },
  expectedYieldPercent: 94,
  meat: [['chuck', 100]],
  ingredients: [
    ['barley', 12],
    ['roots', 35],
    ['flour', 3],
    ['salt', 1.2],
    ['pepper', 0.2],
  ],
  trimmedPart: 0.9,
  cook: [
    [0, 44],
    [10, 58.2],
    [20, 80.6],
    [30, 104],
    [40, 126.4],
    [50, 147.8],
    [60, 163.2],
    [65, 170.6],
    [70, 176.4],
    [80, 181.8],
  ],
  chill: { from: 172, around: 33.2, perMinute: 0.0148, until: 39.2 },
  chillTooSlow: { from: 171, around: 36.4, perMinute: 0.0056, until: 52 },
  package: { value: 1.5, unit: 'lb' },
};
