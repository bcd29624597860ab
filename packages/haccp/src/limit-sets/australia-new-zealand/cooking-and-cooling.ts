import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { cookedProducts, curedCooked } from '../product-class';
import { celsius, cooled, from, held, sinceCooking, stage } from '../write-row';
import { handling, meat, template } from './works';

const inAustralia: Condition = { kind: 'place', among: ['Australia'] };
const inNewZealand: Condition = { kind: 'place', among: ['New Zealand'] };
const cooked: Condition = { kind: 'product', among: cookedProducts };
const cured: Condition[] = [
  inAustralia,
  { kind: 'product', among: curedCooked },
  { kind: 'salt in water phase', least: 2500, formula: 'salt/(salt+water)' },
  { kind: 'nitrite', least: 100_000, per: 'batch' },
];
const poultryMince: Condition = { kind: 'product', among: ['cooked poultry', 'cooked cured poultry', 'patties'] };
const remembered = { known: 'from memory' } as const;

export const cookingAndCoolingRows: readonly LimitRow[] = [
  from(meat, 'cooking')(
    'cook-meat',
    'Cooked meat, site of microbiological concern',
    'cooking',
    held([[celsius(65), '10m']]),
    { conditions: [inAustralia, cooked] },
  ),
  from(template, 'cooking')(
    'cook-poultry',
    'Poultry, mince, liver',
    'cooking',
    held([
      [celsius(65), '15m'],
      [celsius(70), '3m'],
      [celsius(75), '30s'],
    ]),
    {
      conditions: [inNewZealand, poultryMince],
      note: 'Proved on three occasions, then checked weekly (template of 2011).',
    },
  ),
  from({ ...template, edition: 'v3.0, 2011', validFrom: '2011' }, 'cooking')(
    'cook-poultry-2011',
    'Poultry, mince, liver, before 2017',
    'cooking',
    held([
      [celsius(65), '10m'],
      [celsius(70), '2m'],
      [celsius(75), '0s'],
    ]),
    { conditions: [inNewZealand, poultryMince], validUntil: '2017', force: 'archived' },
  ),

  from(handling, 'cooling')(
    'cooling-any',
    'Cooling',
    'cl. 7(3)',
    cooled(stage(celsius(60), celsius(21), 2), stage(celsius(21), celsius(5), 4)),
    { conditions: [inAustralia] },
  ),
  from(template, 'cooling')(
    'cooling-new-zealand',
    'Cooling',
    'cooling',
    cooled(stage(celsius(60), celsius(21), 2), stage(celsius(21), celsius(5), 4)),
    { conditions: [inNewZealand], note: 'Printed as less than 2 h and less than 4 h.' },
  ),
  from(meat, 'cooling')(
    'cooling-uncured-first',
    'Uncured cooked meat, to 50 °C',
    'cooling',
    cooled(sinceCooking(celsius(50), 150)),
    { conditions: [inAustralia, cooked] },
  ),
  from(meat, 'cooling')(
    'cooling-uncured',
    'Uncured cooked meat, from 50 °C',
    'cooling',
    cooled(stage(celsius(50), celsius(12), 6), stage(celsius(12), celsius(5), 1.6)),
    {
      conditions: [inAustralia, cooked],
      note: 'The last stage is printed as 1.6 h and 1 h 36 min, 10 h 6 min in all; an older table totals 10 h.',
    },
  ),
  from(meat, 'cooling')(
    'cooling-cured-first',
    'Cured cooked meat, to 50 °C',
    'cooling',
    cooled(sinceCooking(celsius(50), 195)),
    { conditions: cured },
  ),
  from(meat, 'cooling')(
    'cooling-cured',
    'Cured cooked meat, from 50 °C',
    'cooling',
    cooled(stage(celsius(50), celsius(12), 7.5), stage(celsius(12), celsius(5), 1.75)),
    {
      conditions: cured,
      note:
        'Salt on the water phase may be meant as salt ÷ water; judged here as salt ÷ (salt + water), ' +
        'which is less.',
    },
  ),
  from(meat, 'cooling')(
    'cooling-good-practice-uncured',
    'Uncured cooked meat, good practice in all',
    'cooling',
    cooled(sinceCooking(celsius(5), 480)),
    { conditions: [inAustralia, cooked], force: 'industry' },
  ),
  from(meat, 'cooling')(
    'cooling-good-practice-cured',
    'Cured cooked meat, good practice in all',
    'cooling',
    cooled(sinceCooking(celsius(5), 600)),
    { conditions: cured, force: 'industry' },
  ),
  from(meat, 'cooling')(
    'cooling-simplified-uncured',
    'Uncured cooked meat, simplified',
    'guidance',
    cooled(stage(celsius(52), celsius(12), 6)),
    { ...remembered, conditions: [inAustralia, cooked], note: 'And 5 °C within 24 h of cooking.' },
  ),
  from(meat, 'cooling')(
    'cooling-simplified-cured',
    'Cured cooked meat, simplified',
    'guidance',
    cooled(stage(celsius(52), celsius(12), 7.5)),
    { ...remembered, conditions: cured, note: 'And 5 °C within 24 h of cooking.' },
  ),
];
