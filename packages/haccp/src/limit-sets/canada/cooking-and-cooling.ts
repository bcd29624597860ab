import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import { cookedMeat, cookedPoultryProducts, cookedProducts } from '../product-class';
import { celsius, cooled, figure, from, held, stage } from '../write-row';
import { archived, drugRegulations, healthUnit, ontario } from './works';

const guide = from(ontario, 'cooking');
const premises = from(healthUnit, 'cooking');
const old = from(archived, 'cooling');
const forMeat: Condition[] = [{ kind: 'product', among: cookedMeat }];
const forPoultry: Condition[] = [{ kind: 'product', among: cookedPoultryProducts }];
const cooked: Condition[] = [{ kind: 'product', among: cookedProducts }];
const recalled = { known: 'from memory' } as const;
const copied = { known: 'second hand' } as const;

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

export const cookingAndCoolingRows: readonly LimitRow[] = [
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
    { conditions: forPoultry, isPartial: true, note: 'The rows that were read; the table has more.' },
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
    { conditions: forPoultry, isDefault: true, isPartial: true, note: 'The rows that were read; the table has more.' },
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
    cooled(stage(celsius(54), celsius(27), 2), stage(celsius(27), celsius(4), 7, 'start')),
    { ...copied, conditions: cooked, note: 'The second limit counts from 54 °C: 7 h in all. From fragments of the manual.' },
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
];
