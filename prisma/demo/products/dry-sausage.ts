import { withFrozenPork } from '../plans/with-frozen-pork';
import { withMarkedPieces } from '../plans/with-marked-pieces';
import type { DriedProduct } from './demo-product';

const hour = 60;

export const drySausage: DriedProduct = {
  fields: {
    name: 'Drover’s dry sausage',
    code: 'DRY',
    process: 'cured dried',
    species: 'pork',
    productClass: 'dry sausage',
    storage: 'Keep dry and cool',
    useByDays: 120,
  },
  expectedYieldPercent: 61,
  meat: [
    ['shoulder', 80],
    ['belly', 20],
  ],
  ingredients: [
    ['salt', 2.4],
    ['cure', 0.24],
    ['dextrose', 0.6],
    ['culture', 0.03],
    ['pepper', 0.4],
    ['garlic', 0.2],
  ],
  trimmedPart: 0.86,
  addToPlan: (plan) => withMarkedPieces(withFrozenPork(plan)),
  freeze: [36.2, 29.8, 28, 27.2, 24.1, 9.8, -7.4, -19.6, -27.2, -28.4, -29, -29.4, -29.6, -29.8, -29.6, -29.9, -30, -29.8, -30.1, -30],
  chamber: [
    70.4, 74.8, 77.6, 78.2, 78.8, 79.4, 79.8, 80.2, 79.6, 79.2, 78.8, 79, 79.4, 79.8, 80.1, 79.7, 79.3, 78.9, 79.2, 79.6, 79.9, 79.5, 79.1,
    78.8, 79,
  ],
  acid: [
    [0, 5.81],
    [24 * hour, 5.57],
    [30 * hour, 5.46],
    [34 * hour, 5.37],
    [46 * hour, 5.21],
    [48 * hour, 5.16],
  ],
  pieces: [
    { probe: 'piece 1', grams: 642.5 },
    { probe: 'piece 2', grams: 618.2 },
  ],
  lost: [
    [0, 0],
    [3, 118],
    [7, 199],
    [12, 266],
    [18, 322],
    [24, 361],
    [30, 388],
  ],
  analysed: { aw: 0.838, ratio: 1.72 },
  package: { value: 8, unit: 'oz' },
};
