import * as code from '../food-code';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import { pickledHams } from '../product-class';
import { atLeast, atMost, attest, figure, from } from '../write-row';
import { foodCode2022 } from './works';

const cooling = from(foodCode2022, 'cooling');
const cold = from(foodCode2022, 'cold holding');
const hot = from(foodCode2022, 'hot holding');
const keeping = from(foodCode2022, 'keeping');
const instrument = from(foodCode2022, 'instruments');
const usual = { isDefault: true } as const;
const rop = {
  note: 'Reduced-oxygen packing with a HACCP plan and without a variance: at or below 41 °F and one hurdle.',
};

export const keepingRows: readonly LimitRow[] = [
  cold('thaw', 'Thawing under refrigeration', '3-501.13', atMost(both(41, 5)), usual),
  cold('thaw-running-water', 'Thawing in running water', '3-501.13', atMost(both(70, 21)), usual),
  cold(
    'thaw-raw-time',
    'Raw animal food above 41 °F (5 °C) while thawing',
    '3-501.13',
    figure('time above 41 °F', 'h', { max: 4 }),
    usual,
  ),
  cooling('cooling-any', 'Cooling', '3-501.14(A)', code.coolingFoodCode, usual),
  cooling(
    'cooling-from-ambient',
    'Cooling of food made from ingredients at ambient temperature',
    '3-501.14(B)',
    figure('time to 41 °F (5 °C)', 'h', { max: 4 }),
    usual,
  ),
  hot('hot-holding', 'Hot holding', '3-501.16(A)(1)', code.hotHolding, usual),
  hot('hot-holding-roast', 'Hot holding of roasts cooked by 3-401.11(B)', '3-501.16(A)(1)', atLeast(both(130, 54)), {
    ...usual,
    conditions: [{ kind: 'product', among: ['roast beef', 'cooked whole muscle', ...pickledHams] }],
  }),
  cold('cold-holding', 'Cold holding', '3-501.16(A)(2)', code.coldHolding, usual),
  keeping(
    'date-mark',
    'Ready-to-eat food kept longer than 24 h',
    '3-501.17',
    figure('days at or below 41 °F, the first being day 1', 'days', { max: 7 }),
    { ...usual, note: 'Exempt: shelf-stable dry fermented sausage and shelf-stable salt-cured products.' },
  ),
  keeping('time-as-control', 'Time as the only control', '3-501.19', figure('time', 'h', { max: 4 }), usual),
  keeping(
    'time-as-control-cool',
    'Time as the only control, never above 70 °F (21 °C)',
    '3-501.19',
    figure('time', 'h', { max: 6 }),
    usual,
  ),
  keeping(
    'rop-aw',
    'Reduced-oxygen packing: water activity',
    '3-502.12(B)',
    figure('water activity', 'aw', { max: 0.91 }),
    { ...usual, ...rop },
  ),
  keeping('rop-ph', 'Reduced-oxygen packing: acidity', '3-502.12(B)', figure('pH', 'pH', { max: 4.6 }), {
    ...usual,
    ...rop,
  }),
  keeping(
    'rop-days',
    'Reduced-oxygen packing: days from packing',
    '3-502.12(B)',
    figure('days from packing', 'days', { max: 30 }),
    { ...usual, note: 'Never past the original sell-by or use-by; frozen time excluded.' },
  ),
  keeping(
    'rop-cured-intact',
    'Reduced-oxygen packing: cured at a USDA plant',
    '3-502.12(B)',
    attest('The meat was cured at an inspected plant with 9 CFR 424.21 substances and received in an intact package.'),
    rop,
  ),
  keeping(
    'cook-chill-34-hours',
    'Cook-chill: to 34 °F (1 °C) within',
    '3-502.12(D)',
    figure('time to 34 °F (1 °C)', 'h', { max: 48 }),
    { ...usual, conditions: [{ kind: 'product', among: ['cook-chill dish'] }] },
  ),
  keeping('cook-chill-34-days', 'Cook-chill held at 34 °F (1 °C)', '3-502.12(D)', figure('days', 'days', { max: 30 }), {
    ...usual,
    conditions: [{ kind: 'product', among: ['cook-chill dish'] }],
  }),
  keeping(
    'cook-chill-41-days',
    'Cook-chill held at or below 41 °F (5 °C)',
    '3-502.12(D)',
    figure('days', 'days', { max: 7 }),
    { ...usual, conditions: [{ kind: 'product', among: ['cook-chill dish'] }] },
  ),
  keeping(
    'rop-short',
    'Reduced-oxygen packing without a plan: out of the package within',
    '3-502.12(F)',
    figure('time in the package', 'h', { max: 48 }),
    usual,
  ),
  keeping(
    'variance',
    'Variance for curing, smoking for preservation and other reduced-oxygen packing',
    '3-502.11',
    attest('The authority has granted a variance with its HACCP plan for this process.'),
  ),
  keeping(
    'fish-freezing-records',
    'Records of freezing fish',
    '3-402.12',
    figure('days kept', 'days', { min: 90 }),
    usual,
  ),
  instrument(
    'thermometer-food',
    'Food thermometer in °C or with both scales',
    '4-203.11',
    figure('error either way, in °C', 'ratio', { max: 1, printed: '≤ 1 °C' }),
    { known: 'second hand' },
  ),
  instrument(
    'thermometer-food-f',
    'Food thermometer in °F alone',
    '4-203.11',
    figure('error either way, in °F', 'ratio', { max: 2, printed: '≤ 2 °F' }),
    { known: 'second hand' },
  ),
  instrument(
    'thermometer-air',
    'Thermometer for air or water',
    '4-203.12',
    figure('error either way, in °C', 'ratio', { max: 1.5, printed: '≤ 1.5 °C (3 °F)' }),
    { known: 'from memory' },
  ),
];
