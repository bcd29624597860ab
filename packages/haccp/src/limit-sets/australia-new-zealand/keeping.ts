import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { curedCooked, uncookedCured } from '../product-class';
import { atLeast, atMost, celsius, figure, from, held } from '../write-row';
import { additives, fermentedMeat, handling, meat, template } from './works';

const inAustralia: Condition = { kind: 'place', among: ['Australia'] };
const inNewZealand: Condition = { kind: 'place', among: ['New Zealand'] };
const usual = { isDefault: true } as const;
const remembered = { known: 'from memory' } as const;
const asSodiumNitrite = 'Nitrite and nitrate together, calculated as sodium nitrite, in the food as sold.';

export const keepingRows: readonly LimitRow[] = [
  from(handling, 'cold holding')(
    'cold-holding',
    'Potentially hazardous food, cold',
    'temperature control',
    atMost(celsius(5)),
    { conditions: [inAustralia] },
  ),
  from(handling, 'hot holding')(
    'hot-holding',
    'Potentially hazardous food, hot',
    'temperature control',
    atLeast(celsius(60)),
    { conditions: [inAustralia] },
  ),
  from(handling, 'receiving')(
    'received-chilled',
    'Potentially hazardous food at receipt',
    'receipt',
    atMost(celsius(5)),
    {
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
  from(handling, 'reheating')('reheat', 'Reheating for hot holding', 'cl. 7(4)', held([[celsius(60), '0s']]), {
    conditions: [inAustralia, { kind: 'statement', says: 'The food is reheated to be held hot; for other food no figure is asked for.' }],
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
    { known: 'second hand', note: 'Or an equal combination. As the New South Wales Food Authority restates it.' },
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
