import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import { bacon, chopped, pumpedOrImmersed, uncookedCured } from '../product-class';
import { atLeast, atMost, celsius, figure, from, ingoingAtMost } from '../write-row';
import { archived, driedMeatAdvice, drugRegulations, foodRegulations, listeriaPolicy, preservatives, quebec, redMeat } from './works';

const cured: Condition[] = [{ kind: 'product', among: [...chopped, ...pumpedOrImmersed] }];
const inBacon: Condition[] = [{ kind: 'product', among: bacon }];
const slowCured: Condition[] = [{ kind: 'product', among: uncookedCured }];
const copied = { known: 'second hand' } as const;
const tenTimes = 'Base 15.6 °C of the chamber, until pH 5.3; the band follows the highest temperature before that.';
const perBatch =
  'By weight, before smoking, cooking or fermentation. Judged here on the meat block, which is never ' +
  'heavier than the batch: the strict side.';

export const keepingRows: readonly LimitRow[] = [
  from(foodRegulations, 'cold holding')('cold-holding', 'Refrigerated', 's. 1', atMost(celsius(4)), {
    isDefault: true,
  }),
  from(drugRegulations, 'cold holding')(
    'cold-holding-roasted',
    'Barbecued, roasted or broiled meat or poultry, kept cold',
    'B.14.072, B.22.026',
    atMost(both(40, 4.4)),
    { isDefault: true },
  ),
  from(drugRegulations, 'hot holding')(
    'hot-holding',
    'Barbecued, roasted or broiled meat or poultry, kept hot',
    'B.14.072, B.22.026',
    atLeast(both(140, 60)),
    { isDefault: true },
  ),
  from(quebec, 'cold holding')(
    'cold-holding-quebec',
    'Perishable food, internal and surrounding',
    's. 1.4.1',
    atMost(celsius(4)),
    { conditions: [{ kind: 'place', among: ['Québec'] }], isDefault: true },
  ),
  from(quebec, 'frozen holding')('frozen-holding', 'Frozen', 's. 1.4.1', atMost(celsius(-18)), {
    conditions: [{ kind: 'place', among: ['Québec'] }],
    isDefault: true,
  }),
  from(quebec, 'hot holding')('hot-holding-quebec', 'Hot', 's. 1.4.1', atLeast(celsius(60)), {
    conditions: [{ kind: 'place', among: ['Québec'] }],
    isDefault: true,
  }),
  from(redMeat, 'receiving')(
    'received-chilled',
    'Red meat, storage and shipping',
    'storage and shipping',
    atMost(celsius(4)),
    { isDefault: true, note: 'May leave warmer only with extra controls through shipping and receiving.' },
  ),
  from(archived, 'cold holding')(
    'processing-room',
    'Air of the processing room',
    'as summarised',
    atMost(celsius(10)),
    copied,
  ),

  from(archived, 'curing')(
    'nitrite-comminuted',
    'Nitrite and nitrate together in cured meat',
    '4.13.1',
    ingoingAtMost('sodium nitrite', 200, '200 ppm'),
    { conditions: cured, isDefault: true, note: perBatch },
  ),
  from(archived, 'curing')(
    'nitrite-least',
    'Least nitrite or nitrate for a product to be cured',
    '4.13.1',
    figure('ingoing nitrite and nitrate, on the batch', 'ppm', { min: 100 }),
    { conditions: cured, isDefault: true },
  ),
  from(archived, 'curing')(
    'bacon-nitrite',
    'Nitrite in side bacon',
    '4.13.1',
    ingoingAtMost('sodium nitrite', 120, '120 ppm'),
    { ...copied, conditions: inBacon, note: perBatch },
  ),
  from(preservatives, 'curing')(
    'nitrate-slow-cured',
    'Nitrate in slow-cured, dry and semi-dry products',
    'Part 1',
    ingoingAtMost('sodium nitrate', 200, '0.32 oz per 100 lb (200 ppm)'),
    { ...copied, conditions: slowCured, note: perBatch },
  ),

  from(driedMeatAdvice, 'fermenting')(
    'degree-hours-cool',
    'Degree-hours, highest below 33 °C',
    'degree-hours',
    figure('degree-hours', '°C·h', { max: 665 }),
    { note: tenTimes },
  ),
  from(driedMeatAdvice, 'fermenting')(
    'degree-hours-warm',
    'Degree-hours, highest 33-37 °C',
    'degree-hours',
    figure('degree-hours', '°C·h', { max: 555 }),
    { note: tenTimes },
  ),
  from(driedMeatAdvice, 'fermenting')(
    'degree-hours-hot',
    'Degree-hours, highest above 37 °C',
    'degree-hours',
    figure('degree-hours', '°C·h', { max: 500 }),
    { note: tenTimes },
  ),
  from(archived, 'fermenting')(
    'fermented-nitrite',
    'Shelf-stable fermented product, nitrite and nitrate',
    '4.16',
    figure('ingoing nitrite and nitrate', 'ppm', { min: 100 }),
    copied,
  ),
  from(archived, 'fermenting')(
    'fermented-salt',
    'Shelf-stable fermented product, salt',
    '4.16',
    figure('salt', '%', { min: 2.5 }),
    copied,
  ),
  from(archived, 'fermenting')(
    'target-fermented-o157',
    'E. coli O157:H7 in fermented sausage, validated process',
    '4.16',
    figure('E. coli O157:H7 reduction', 'log10', { min: 5 }),
    copied,
  ),
  from(foodRegulations, 'keeping')(
    'keep-cold-aw',
    'No keep-cold statement: dried',
    's. 286',
    figure('water activity', 'aw', { max: 0.85 }),
    { isDefault: true },
  ),
  from(foodRegulations, 'keeping')(
    'keep-cold-ph',
    'No keep-cold statement: acid',
    's. 286',
    figure('pH', 'pH', { max: 4.6 }),
    { isDefault: true },
  ),
  from(foodRegulations, 'keeping')(
    'keep-cold-fermented-ph',
    'No keep-cold statement: fermented, acidity',
    's. 286',
    figure('pH at the end of fermentation', 'pH', { max: 5.3 }),
    { isDefault: true, note: 'Together with water activity ≤ 0.90.' },
  ),
  from(foodRegulations, 'keeping')(
    'keep-cold-fermented-aw',
    'No keep-cold statement: fermented, water activity',
    's. 286',
    figure('water activity at the end of fermentation', 'aw', { max: 0.9 }),
    { isDefault: true, note: 'Together with pH ≤ 5.3.' },
  ),
  from(listeriaPolicy, 'keeping')(
    'listeria-ph',
    'Not supporting Listeria: acidity',
    'categories',
    figure('pH', 'pH', { max: 4.4, signs: { max: '<' } }),
  ),
  from(listeriaPolicy, 'keeping')(
    'listeria-aw',
    'Not supporting Listeria: water activity',
    'categories',
    figure('water activity', 'aw', { max: 0.92, signs: { max: '<' } }),
  ),
];
