import type { productFields } from '@larderbook/contracts';
import type { z } from 'zod';
import { chill, type Curve } from './curves';
import type { ItemKey } from './shop';

type Share = [item: ItemKey, percent: number];
export type DemoProduct = z.output<typeof productFields> & {
  expectedYieldPercent: number;
  meat: Share[];
  ingredients: Share[];
  /** Part of the meat that is left after boning and trimming. */
  trimmedPart: number;
  /** Minutes from product into heat, °F at the core. */
  cook: Curve;
  chill: Curve;
  chillTooSlow: Curve;
  package: { value: number; unit: 'lb' | 'oz' };
};

const sausage: DemoProduct = {
  name: 'Kiln Lane smoked sausage',
  code: 'SMS',
  process: 'cured smoked cooked',
  species: 'pork',
  productClass: 'cooked sausage',
  storage: 'Keep refrigerated at or below 40 °F',
  useByDays: 28,
  expectedYieldPercent: 88,
  meat: [['shoulder', 70], ['belly', 30]],
  ingredients: [['salt', 1.6], ['cure', 0.24], ['erythorbate', 0.05], ['pepper', 0.3], ['garlic', 0.15], ['paprika', 0.2]],
  trimmedPart: 0.82,
  cook: [[0, 42], [20, 51.5], [45, 63], [70, 77.2], [95, 90.4], [120, 102.6], [145, 113.8], [170, 123], [190, 130.4], [210, 137.6], [230, 144.8], [250, 151], [265, 155.6], [275, 158.4], [280, 159.6]],
  chill: chill({ from: 150, around: 31, perMinute: 0.0125, every: 10, until: 39.6 }),
  chillTooSlow: chill({ from: 150, around: 36, perMinute: 0.0022, every: 30, until: 43.6 }),
  package: { value: 12, unit: 'oz' },
};

const stew: DemoProduct = {
  name: 'Beef and barley stew',
  code: 'STW',
  process: 'cook-chill',
  species: 'beef',
  productClass: 'cook-chill dish',
  storage: 'Keep refrigerated at or below 41 °F',
  useByDays: 6,
  expectedYieldPercent: 94,
  meat: [['chuck', 100]],
  ingredients: [['barley', 12], ['roots', 35], ['flour', 3], ['salt', 1.2], ['pepper', 0.2]],
  trimmedPart: 0.9,
  cook: [[0, 44], [10, 58.2], [20, 80.6], [30, 104], [40, 126.4], [50, 147.8], [60, 163.2], [65, 170.6], [70, 176.4], [80, 181.8]],
  chill: chill({ from: 172, around: 31, perMinute: 0.0125, every: 10, until: 39.8 }),
  chillTooSlow: chill({ from: 172, around: 35, perMinute: 0.0052, every: 15, until: 40.6 }),
  package: { value: 1.5, unit: 'lb' },
};

const roast: DemoProduct = {
  name: 'Peppered roast beef',
  code: 'RST',
  process: 'roast',
  species: 'beef',
  productClass: 'roast beef',
  storage: 'Keep refrigerated at or below 40 °F',
  useByDays: 14,
  expectedYieldPercent: 80,
  meat: [['round', 100]],
  ingredients: [['salt', 1], ['pepper', 0.6], ['garlic', 0.1]],
  trimmedPart: 0.94,
  cook: [[0, 41], [20, 53.4], [40, 66.2], [60, 79.4], [80, 92.2], [100, 104.6], [120, 116], [140, 126.4], [155, 133.6], [170, 139.8], [180, 143.4], [188, 145.8], [192, 146.6], [196, 147.2], [200, 147.6]],
  chill: chill({ from: 146, around: 29, perMinute: 0.0155, every: 10, until: 38.6 }),
  chillTooSlow: chill({ from: 146, around: 33, perMinute: 0.0062, every: 15, until: 39.4 }),
  package: { value: 2, unit: 'lb' },
};

export const products = { sausage, stew, roast };
export type ProductKey = keyof typeof products;
