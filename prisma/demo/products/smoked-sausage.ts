import { chill } from '../curves';
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
    [210, 137.6], [230, 144.8], [250, 151], [265, 155.6], [275, 158.4], [280, 159.6],
  ],
  chill: chill({ from: 150, around: 31, perMinute: 0.0125, every: 10, until: 39.6 }),
  chillTooSlow: chill({ from: 150, around: 36, perMinute: 0.0022, every: 30, until: 43.6 }),
  package: { value: 12, unit: 'oz' },
};
