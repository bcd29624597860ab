import { withProcessLetter } from '../plans/with-process-letter';
import type { CookedProduct } from './demo-product';

export const pulledPork: CookedProduct = {
  fields: {
    name: 'Kettle pulled pork',
    code: 'PLP',
    process: 'cook-chill',
    species: 'pork',
    productClass: 'cook-chill dish',
    storage: 'Keep refrigerated at or below 41 °F',
    useByDays: 7,
  },
  expectedYieldPercent: 72,
  meat: [['shoulder', 100]],
  ingredients: [
    ['salt', 1.4],
    ['paprika', 0.8],
    ['garlic', 0.4],
    ['pepper', 0.3],
  ],
  trimmedPart: 0.84,
  addToPlan: withProcessLetter,
  cook: [
    [0, 43],
    [15, 71.2],
    [30, 96.4],
    [45, 119.6],
    [60, 138.2],
    [75, 150.8],
    [90, 160.6],
    [105, 168.4],
    [120, 174.8],
    [135, 180.6],
    [150, 185.2],
    [165, 189],
    [180, 191.4],
  ],
  watchedClosely: true,
  chill: { from: 168, around: 33, perMinute: 0.022, until: 39 },
  package: { value: 1, unit: 'lb' },
};
