import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { cookedProducts, curedCooked, uncookedCured } from '../product-class';
import { atLeast, atMost, celsius, cooled, figure, from, held, stage, type Work } from '../write-row';

const handling: Work = {
  citation: 'Australia, Food Standards Code, Standard 3.2.2',
  edition: 'as read in 2026',
  validFrom: '2026',
  force: 'law',
  known: 'read in the source',
};
const meat: Work = {
  citation: 'Australia, AS 4696 and its guidance, as quoted by a training page and Campden tables',
  edition: 'AS 4696:2023 (replaces 2007)',
  validFrom: '2023',
  force: 'standard',
  known: 'second hand',
};
const additives: Work = {
  citation: 'Food Standards Code, Standard 1.3.1 and Schedule 15',
  edition: 'as of 13 September 2024',
  url: 'https://www.legislation.gov.au/F2015L00439/2024-09-13',
  validFrom: '2024-09-13',
  force: 'law',
  known: 'from memory',
};
const template: Work = {
  citation: 'New Zealand, Ministry for Primary Industries, template food control plan',
  edition: '2017, restated in 2020',
  validFrom: '2017',
  force: 'guide',
  known: 'second hand',
};
const fermentedMeat: Work = {
  citation: 'Food Standards Code, uncooked comminuted fermented meat',
  edition: 'Amendment 68, 2003',
  validFrom: '2003',
  force: 'law',
  known: 'read in the source',
};
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
const usual = { isDefault: true } as const;
const remembered = { known: 'from memory' } as const;
const quoted = { known: 'second hand' } as const;
const asSodiumNitrite = 'Nitrite and nitrate together, calculated as sodium nitrite, in the food as sold.';

export const southernRows: readonly LimitRow[] = [
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
    { ...quoted, conditions: [inAustralia] },
  ),
  from(template, 'cooling')(
    'cooling-new-zealand',
    'Cooling',
    'cooling',
    cooled(stage(celsius(60), celsius(21), 2), stage(celsius(21), celsius(5), 4)),
    { ...remembered, conditions: [inNewZealand], note: 'Printed as less than 2 h and less than 4 h.' },
  ),
  from(meat, 'cooling')(
    'cooling-uncured-first',
    'Uncured cooked meat, to 50 °C',
    'cooling',
    figure('time from the end of cooking to 50 °C (122 °F)', 'min', { max: 150 }),
    { conditions: [inAustralia, cooked] },
  ),
  from(meat, 'cooling')(
    'cooling-uncured',
    'Uncured cooked meat, from 50 °C',
    'cooling',
    cooled(stage(celsius(50), celsius(12), 6), stage(celsius(12), celsius(5), 1.5)),
    {
      conditions: [inAustralia, cooked],
      note: 'The training page prints 1.6 h for the last stage; the table behind it totals 10 h.',
    },
  ),
  from(meat, 'cooling')(
    'cooling-cured-first',
    'Cured cooked meat, to 50 °C',
    'cooling',
    figure('time from the end of cooking to 50 °C (122 °F)', 'min', { max: 195 }),
    { conditions: cured },
  ),
  from(meat, 'cooling')(
    'cooling-cured',
    'Cured cooked meat, from 50 °C',
    'cooling',
    cooled(stage(celsius(50), celsius(12), 7.5), stage(celsius(12), celsius(5), 1.75)),
    {
      conditions: cured,
      note: 'Salt on the water phase may be meant as salt ÷ water; judged here as salt ÷ (salt + water), which is less.',
    },
  ),
  from(meat, 'cooling')(
    'cooling-good-practice-uncured',
    'Uncured cooked meat, good practice in all',
    'cooling',
    figure('time from the end of cooking to 5 °C (41 °F)', 'min', { max: 480 }),
    { conditions: [inAustralia, cooked], force: 'industry' },
  ),
  from(meat, 'cooling')(
    'cooling-good-practice-cured',
    'Cured cooked meat, good practice in all',
    'cooling',
    figure('time from the end of cooking to 5 °C (41 °F)', 'min', { max: 600 }),
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

  from(handling, 'cold holding')(
    'cold-holding',
    'Potentially hazardous food, cold',
    'temperature control',
    atMost(celsius(5)),
    { ...usual, conditions: [inAustralia] },
  ),
  from(handling, 'hot holding')(
    'hot-holding',
    'Potentially hazardous food, hot',
    'temperature control',
    atLeast(celsius(60)),
    { ...usual, conditions: [inAustralia] },
  ),
  from(handling, 'receiving')(
    'received-chilled',
    'Potentially hazardous food at receipt',
    'receipt',
    atMost(celsius(5)),
    {
      ...usual,
      conditions: [inAustralia],
      note: 'Or at least 60 °C, unless the carrier shows that the time taken keeps it safe.',
    },
  ),
  from(template, 'cold holding')('cold-holding-new-zealand', 'Cold', 'holding', atMost(celsius(5)), {
    ...remembered,
    conditions: [inNewZealand],
  }),
  from(template, 'hot holding')('hot-holding-new-zealand', 'Hot', 'holding', atLeast(celsius(60)), {
    ...remembered,
    conditions: [inNewZealand],
  }),
  from(handling, 'keeping')(
    'time-use',
    'Between 5 and 60 °C in all: use or refrigerate',
    '2 h / 4 h guide',
    figure('time between 5 and 60 °C', 'h', { max: 2, signs: { max: '<' } }),
    { ...remembered, conditions: [inAustralia] },
  ),
  from(handling, 'keeping')(
    'time-discard',
    'Between 5 and 60 °C in all: discard after',
    '2 h / 4 h guide',
    figure('time between 5 and 60 °C', 'h', { max: 4 }),
    { ...remembered, conditions: [inAustralia] },
  ),
  from(handling, 'reheating')('reheat', 'Reheating for hot holding', 'reheating', held([[celsius(60), '0s']]), {
    ...remembered,
    conditions: [inAustralia],
    note: 'Rapidly; 75 °C is common advice.',
  }),
  from(meat, 'cold holding')('storage-surface', 'Carcass and meat, surface', 'storage', atMost(celsius(7)), {
    ...remembered,
    conditions: [inAustralia],
  }),
  from(meat, 'cold holding')('storage-offal', 'Offal', 'storage', atMost(celsius(5)), {
    ...remembered,
    conditions: [inAustralia],
  }),
  from(meat, 'frozen holding')('frozen-holding', 'Frozen meat', 'storage', atMost(celsius(-12)), {
    ...remembered,
    conditions: [inAustralia],
  }),

  from(additives, 'curing')(
    'nitrite-cured',
    'Nitrite in cured, processed and comminuted meat',
    '8.2, 8.3',
    figure('nitrite and nitrate as NaNO₂, in the food', 'ppm', { max: 125 }),
    { conditions: [{ kind: 'product', among: curedCooked }], note: asSodiumNitrite },
  ),
  from(additives, 'curing')(
    'nitrite-uncooked',
    'Nitrite in slow-dried and uncooked fermented meat',
    '8.2, 8.3',
    figure('nitrite as NaNO₂, in the food', 'ppm', { max: 125 }),
    { conditions: [{ kind: 'product', among: uncookedCured }] },
  ),
  from(additives, 'curing')(
    'nitrate-uncooked',
    'Nitrate in slow-dried and uncooked fermented meat',
    '8.2, 8.3',
    figure('nitrite and nitrate as NaNO₂, in the food', 'ppm', { max: 500 }),
    { conditions: [{ kind: 'product', among: uncookedCured }], note: asSodiumNitrite },
  ),
  from(additives, 'curing')(
    'nitrite-sterilised',
    'Nitrite in commercially sterile canned cured meat',
    '8.2, 8.3',
    figure('nitrite as NaNO₂, in the food', 'ppm', { max: 50 }),
    { conditions: [{ kind: 'product', among: ['sterilised cured meat'] }] },
  ),

  from(fermentedMeat, 'fermenting')(
    'fermented-core',
    'Not a fermented product for this rule: core held at',
    'definition',
    held([[celsius(65), '10m']]),
    { ...usual, note: 'Or an equal combination.' },
  ),
  from(fermentedMeat, 'fermenting')(
    'fermented-e-coli-most',
    'E. coli, none of five above',
    'end-product limits',
    figure('E. coli', 'cfu/g', { max: 9.2 }),
    { ...usual, note: 'n = 5, c = 1, m = 3.6.' },
  ),
  from(fermentedMeat, 'fermenting')(
    'fermented-e-coli-usual',
    'E. coli, at most one of five above',
    'end-product limits',
    figure('E. coli', 'cfu/g', { max: 3.6 }),
    usual,
  ),
  from(fermentedMeat, 'fermenting')(
    'fermented-staphylococci-most',
    'Coagulase-positive staphylococci, none of five above',
    'end-product limits',
    figure('staphylococci', 'cfu/g', { max: 10_000 }),
    { ...usual, note: 'n = 5, c = 1, m = 1000.' },
  ),
  from(fermentedMeat, 'fermenting')(
    'fermented-staphylococci-usual',
    'Coagulase-positive staphylococci, at most one of five above',
    'end-product limits',
    figure('staphylococci', 'cfu/g', { max: 1000 }),
    usual,
  ),
];
