import type { CookedProduct } from './demo-product';

export const smokedSausage: CookedProduct = {
  fields: {
    name: 'Kiln Lane smoked sausage',
    code: 'SMS',
    process: 'cured smoked cooked',
    species: 'pork',
    productClass: 'cooked sausage',
    storage: 'Keep refrigerated at or below 40 °F',
    useByDays: 28,
  },
  expectedYieldPercent: 88,
  meat: [['shoulder', 70], ['belly', 30]],
  ingredients: [
    ['salt', 1.6], ['cure', 0.24], ['erythorbate', 0.05], ['pepper', 0.3], ['garlic', 0.15], ['paprika', 0.2],
  ],
  trimmedPart: 0.82,
  cook: [
    [0, 42], [20, 51.5], [45, 63], [70, 77.2], [95, 90.4], [120, 102.6], [145, 113.8], [170, 123], [190, 130.4],
    [210, 137.6], [230, 144.8], [250, 151], [265, 156], [275, 159], [282, 160.4],
  ],
  chill: { from: 150, around: 33, perMinute: 0.0145, until: 38.9 },
  package: { value: 12, unit: 'oz' },
};
