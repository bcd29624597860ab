import type { CoolingLimit, DwellLimit, DwellRow, RangeLimit } from '../limits/limit';
import { both } from './printed';
import { foodCode } from './sources';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

const HOUR = 3600;
const dwell = (section: string, rows: [fahrenheit: number, celsius: number, seconds: number][]): DwellLimit => ({
  kind: 'dwell',
  rows: rows.map(([fahrenheit, celsius, seconds]): DwellRow => ({ at: both(fahrenheit, celsius), seconds })),
  longestGapSeconds: LONGEST_GAP_SECONDS.hold,
  source: foodCode(section),
});

/** Whole roasts, cured ones (ham) included; the hold may include the rise after the oven. */
export const roastFoodCode = dwell('3-401.11(B)(1), whole roasts', [
  [130, 54.4, 112 * 60],
  [131, 55.0, 89 * 60],
  [133, 56.1, 56 * 60],
  [135, 57.2, 36 * 60],
  [136, 57.8, 28 * 60],
  [138, 58.9, 18 * 60],
  [140, 60.0, 12 * 60],
  [142, 61.1, 8 * 60],
  [144, 62.2, 5 * 60],
  [145, 62.8, 4 * 60],
  [147, 63.9, 134],
  [149, 65.0, 85],
  [151, 66.1, 54],
  [153, 67.2, 34],
  [155, 68.3, 22],
  [157, 69.4, 14],
  [158, 70.0, 0],
]);

/** Intact meat, fish, eggs to order. */
export const intactMeatFoodCode = dwell('3-401.11(A)(1), intact meat', [[145, 63, 15]]);

/** Comminuted, injected or tenderised meat. "Less than 1 second" is taken as one reading at or above. */
export const groundMeatFoodCode = dwell('3-401.11(A)(2), comminuted or non-intact meat', [
  [145, 63, 3 * 60],
  [150, 66, 60],
  [155, 68, 17],
  [158, 70, 0],
]);

/** Poultry, wild game, stuffed food. "Less than 1 second" is taken as one reading at or above. */
export const poultryFoodCode = dwell('3-401.11(A)(3), poultry and stuffed food', [[165, 74, 0]]);

/** Reheating for hot holding. */
export const reheatedFoodCode = dwell('3-403.11(A), reheating for hot holding', [[165, 74, 15]]);

/** Cooked food: the second bound counts from the first one's start. */
export const coolingFoodCode: CoolingLimit = {
  kind: 'cooling',
  stages: [
    { from: both(135, 57), to: both(70, 21), withinSeconds: 2 * HOUR, counted: 'stage' },
    { from: both(70, 21), to: both(41, 5), withinSeconds: 6 * HOUR, counted: 'start' },
  ],
  longestGapSeconds: LONGEST_GAP_SECONDS.cooling,
  source: foodCode('3-501.14(A), cooling'),
};

export const coldHolding: RangeLimit = {
  kind: 'range',
  measured: 'temperature',
  max: both(41, 5),
  source: foodCode('3-501.16(A)(2), cold holding'),
};

export const hotHolding: RangeLimit = {
  kind: 'range',
  measured: 'temperature',
  min: both(135, 57),
  source: foodCode('3-501.16(A)(1), hot holding'),
};
