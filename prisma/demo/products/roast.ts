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
    [170, 140.4], [180, 144.2], [188, 146.9], [196, 148.8], [206, 150.2],
  ],
  chill: { from: 148, around: 33, perMinute: 0.0152, until: 38.8 },
  chillTooSlow: { from: 147, around: 34, perMinute: 0.0066, until: 38.8, mended: { at: 82, perMinute: 0.0142 } },
  package: { value: 1, unit: 'lb' },
};
