import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import {
  bacon,
  chopped,
  cookedMeat,
  cookedPoultryProducts,
  cookedProducts,
  pumpedOrImmersed,
  uncookedCured,
} from '../product-class';
import { atLeast, atMost, celsius, cooled, figure, from, held, ingoingAtMost, stage } from '../write-row';
import {
  archived,
  drugRegulations,
  foodRegulations,
  healthUnit,
  listeriaPolicy,
  ontario,
  preservatives,
  quebec,
  redMeat,
} from './works';

const guide = from(ontario, 'cooking');
const premises = from(healthUnit, 'cooking');
const old = from(archived, 'cooling');
const forMeat: Condition[] = [{ kind: 'product', among: cookedMeat }];
const forPoultry: Condition[] = [{ kind: 'product', among: cookedPoultryProducts }];
const cooked: Condition[] = [{ kind: 'product', among: cookedProducts }];
const cured: Condition[] = [{ kind: 'product', among: [...chopped, ...pumpedOrImmersed] }];
const inBacon: Condition[] = [{ kind: 'product', among: bacon }];
const slowCured: Condition[] = [{ kind: 'product', among: uncookedCured }];
const recalled = { known: 'from memory' } as const;
const copied = { known: 'second hand' } as const;
const tenTimes = 'Base 15.6 °C of the chamber, until pH 5.3; the band follows the highest temperature before that.';
const perBatch =
  'By weight, before smoking, cooking or fermentation. Judged here on the meat block, which is never heavier than the batch: the strict side.';

/** 6.5-log Salmonella, in °C alone: Ontario Meat Plant Guidelines, Appendix 1, Table 1. */
const TABLE = [
  [54.4, '112m'],
  [55, '89m'],
  [55.6, '71m'],
  [56.1, '56m'],
  [56.7, '45m'],
  [57.2, '36m'],
  [57.8, '28m'],
  [58.4, '23m'],
  [58.9, '18m'],
  [59.5, '15m'],
  [60, '12m'],
  [60.6, '9m'],
  [61.1, '8m'],
  [61.7, '6m'],
  [62.2, '5m'],
  [62.8, '4m'],
  [63.9, '134s'],
  [64.4, '107s'],
  [65, '85s'],
  [65.6, '67s'],
  [66.1, '54s'],
  [66.7, '43s'],
  [67.2, '34s'],
  [67.8, '27s'],
  [68.3, '22s'],
  [68.9, '17s'],
  [69.4, '14s'],
  [70, '0s'],
  [70.6, '0s'],
  [71.1, '0s'],
] as const;

export const canadianRows: readonly LimitRow[] = [
  guide(
    'cooked-meat-6.5-log',
    'Cooked meat, 6.5-log Salmonella',
    'Appendix 1, Table 1',
    held(TABLE.map(([at, time]) => [celsius(at), time] as const)),
    { conditions: forMeat, isDefault: true },
  ),
  guide(
    'cooked-chicken-7-log-1-fat',
    'Cooked chicken, 1 % fat, 7-log Salmonella',
    'Appendix 1, Table 2',
    held([
      [celsius(57.8), '63.3m'],
      [celsius(60), '25.2m'],
      [celsius(62.2), '10.4m'],
    ]),
    { conditions: forPoultry, note: 'The rows that were read; the table has more.' },
  ),
  guide(
    'cooked-chicken-7-log-12-fat',
    'Cooked chicken, 12 % fat, 7-log Salmonella',
    'Appendix 1, Table 2',
    held([
      [celsius(57.8), '81.4m'],
      [celsius(60), '35m'],
      [celsius(62.2), '15.9m'],
    ]),
    { conditions: forPoultry, isDefault: true, note: 'The rows that were read; the table has more.' },
  ),
  premises(
    'cook-intact',
    'Pork and meat other than poultry, food premises',
    'critical control points',
    held([[both(160, 71), '15s']]),
    { isDefault: true },
  ),
  premises(
    'cook-poultry',
    'Ground poultry, poultry pieces and mixtures, food premises',
    'critical control points',
    held([[both(165, 74), '15s']]),
    { isDefault: true },
  ),
  premises(
    'cook-whole-poultry',
    'Whole poultry, food premises',
    'critical control points',
    held([[both(180, 82), '15s']]),
    { isDefault: true },
  ),
  from(drugRegulations, 'cooking')(
    'cook-tenderized-beef',
    'Mechanically tenderized beef, label message',
    'B.14.022',
    held([[both(145, 63), '0s']]),
    { isDefault: true },
  ),

  old('cooling-intact', 'Cooling of intact muscle, 50 to 20 °C', '4.5', cooled(stage(celsius(50), celsius(20), 2)), {
    ...copied,
    conditions: [{ kind: 'product', among: ['roast beef', 'cooked whole muscle', 'cooked poultry'] }],
    note: 'Roast beef, turkey breast, pork loin; not tenderized.',
  }),
  old(
    'cooling-intact-total',
    'Cooling of intact muscle to 4 °C from the start of cooling',
    '4.5',
    figure('time from the start of cooling to 4 °C (39.2 °F)', 'min', { max: 450 }),
    {
      ...copied,
      conditions: [{ kind: 'product', among: ['roast beef', 'cooked whole muscle', 'cooked poultry'] }],
      note: 'Copies disagree whether it runs from the start of cooling or of cooking; cooling is taken as meant.',
    },
  ),
  old(
    'cooling-any',
    'Cooling, rapid schedule',
    '4.5',
    cooled(stage(celsius(54), celsius(27), 2), stage(celsius(27), celsius(4), 5)),
    { ...recalled, conditions: cooked, note: '54 and 27 °C were read; the hours are remembered.' },
  ),
  from(healthUnit, 'cooling')(
    'cooling-premises',
    'Cooling in food premises',
    'critical control points',
    cooled(stage(celsius(60), celsius(20), 2), stage(celsius(20), celsius(4), 4)),
    { ...recalled, conditions: cooked, note: 'The first stage was read; the hours of the second are remembered.' },
  ),
  from(healthUnit, 'cooling')(
    'cooling-premises-first',
    'Cooling in food premises, first stage',
    'critical control points',
    cooled(stage(celsius(60), celsius(20), 2)),
    { conditions: cooked, isDefault: true },
  ),

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

  from(archived, 'fermenting')(
    'degree-hours-cool',
    'Degree-hours, highest below 33 °C',
    '4.16',
    figure('degree-hours', '°C·h', { max: 665 }),
    { ...recalled, note: tenTimes },
  ),
  from(archived, 'fermenting')(
    'degree-hours-warm',
    'Degree-hours, highest 33-37 °C',
    '4.16',
    figure('degree-hours', '°C·h', { max: 555 }),
    { ...recalled, note: tenTimes },
  ),
  from(archived, 'fermenting')(
    'degree-hours-hot',
    'Degree-hours, highest above 37 °C',
    '4.16',
    figure('degree-hours', '°C·h', { max: 500 }),
    { ...recalled, note: tenTimes },
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
