import * as code from '../food-code';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import { cookedPoultryProducts, freshSausage, pickledHams } from '../product-class';
import { atLeast, atMost, figure, from, held } from '../write-row';
import { foodCode2022 } from './works';

const cooking = from(foodCode2022, 'cooking');
const reheating = from(foodCode2022, 'reheating');
const humidity = from(foodCode2022, 'humidity');
const usual = { isDefault: true } as const;

export const cookingRows: readonly LimitRow[] = [
  cooking('cook-intact', 'Intact meat, fish, eggs to order', '3-401.11(A)(1)', code.intactMeatFoodCode, usual),
  cooking('cook-comminuted', 'Comminuted or non-intact meat', '3-401.11(A)(2)', code.groundMeatFoodCode, {
    ...usual,
    conditions: [
      {
        kind: 'product',
        among: [
          ...freshSausage,
          'ground beef',
          'patties',
          'cooked sausage',
          'frankfurter',
          'luncheon meat',
          'smoked pork sausage',
        ],
      },
    ],
  }),
  cooking('cook-poultry', 'Poultry, wild game, stuffed food', '3-401.11(A)(3)', code.poultryFoodCode, {
    ...usual,
    conditions: [{ kind: 'product', among: [...cookedPoultryProducts, 'cook-chill dish'] }],
  }),
  cooking('roast', 'Whole roasts, cured ones (ham) included', '3-401.11(B)(1)', code.roastFoodCode, {
    ...usual,
    conditions: [{ kind: 'product', among: ['roast beef', 'cooked whole muscle', ...pickledHams] }],
  }),
  humidity('roast-oven-still', 'Roast under 10 lb (4.5 kg), still dry oven', '3-401.11(B)(2)', atLeast(both(350, 177))),
  humidity(
    'roast-oven-convection',
    'Roast under 10 lb (4.5 kg), convection oven',
    '3-401.11(B)(2)',
    atLeast(both(325, 163)),
  ),
  humidity(
    'roast-oven-large',
    'Roast of 10 lb (4.5 kg) or more, either oven',
    '3-401.11(B)(2)',
    atLeast(both(250, 121)),
  ),
  humidity('roast-oven-humid', 'Roast of any weight, high humidity', '3-401.11(B)(2)', atMost(both(250, 121)), {
    conditions: [
      {
        kind: 'statement',
        says: 'Relative humidity is above 90 % for at least 1 h, or the roast is in a moisture-proof bag.',
      },
    ],
  }),
  cooking('cook-plant-food', 'Plant food for hot holding', '3-401.13', held([[both(135, 57), '0s']]), usual),
  cooking(
    'non-continuous-heat',
    'Non-continuous cooking, first heating',
    '3-401.14',
    figure('initial heating', 'min', { max: 60 }),
    { ...usual, note: 'Then cooled by 3-501.14; the written procedure needs prior approval.' },
  ),
  reheating('reheat-hot-holding', 'Reheating for hot holding', '3-403.11(A)', code.reheatedFoodCode, usual),
  reheating(
    'reheat-plant-packaged',
    'Reheating of plant-packaged ready-to-eat food',
    '3-403.11',
    held([[both(135, 57), '0s']]),
    usual,
  ),
  reheating('reheat-time', 'Reheating within', '3-403.11', figure('reheating', 'h', { max: 2 }), usual),
];
