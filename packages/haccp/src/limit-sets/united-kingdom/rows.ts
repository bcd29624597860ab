import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { bacon, cookedProducts, curedCooked, uncookedCured } from '../product-class';
import { atLeast, atMost, celsius, figure, from, held, ingoingAtMost } from '../write-row';
import {
  burgers,
  cookChill1989,
  cookingAdvice,
  england,
  irishCookChill,
  nitriteInBritain,
  nitriteInIreland,
  scotland,
  trainers,
  vacuumPacks,
  wales,
} from './works';

const at = (...among: string[]): Condition => ({ kind: 'place', among });
const notScotland: Condition = { kind: 'place', among: ['England', 'Wales', 'Northern Ireland'] };
const cookChill: Condition = {
  kind: 'product',
  among: ['cook-chill dish', 'cooked whole muscle', 'cooked poultry', 'roast beef'],
};
const retail =
  'Not for a plant to which Regulation (EC) 853/2004 applies; its figures are in the set of the European Union.';
const usual = { isDefault: true } as const;
const ungoverned = 'Inferred: the change of 2023 came after the United Kingdom had left. Check before use.';
const britain = at('England', 'Wales', 'Scotland');

const advice = from(cookingAdvice, 'cooking');
const irish = (purpose: 'cooking' | 'reheating' | 'cooling') => from(irishCookChill, purpose);
const old = (purpose: 'cooking' | 'reheating' | 'cooling' | 'cold holding' | 'keeping' | 'frozen holding') =>
  from(cookChill1989, purpose);
const packs = from(vacuumPacks, 'keeping');
/** Non-proteolytic Clostridium botulinum, 6-log: minutes at 80 to 100 °C. */
const BOTULINUM = [129, 100, 77, 60, 46, 36, 28, 22, 17, 13, 10, 7.9, 6.3, 5, 4, 3.2, 2.5, 2, 1.6, 1.3, 1];

export const kingdomRows: readonly LimitRow[] = [
  advice(
    'cook-equivalents',
    'Cooked through',
    'cooking your food',
    held([
      [celsius(60), '45m'],
      [celsius(65), '10m'],
      [celsius(70), '2m'],
      [celsius(75), '30s'],
      [celsius(80), '6s'],
    ]),
    { conditions: [{ kind: 'product', among: [...cookedProducts, 'patties'] }] },
  ),
  from(burgers, 'cooking')(
    'cook-burgers',
    'Beef burgers, z = 6 °C',
    'report',
    held([
      [celsius(65), '13.6m'],
      [celsius(70), '2m'],
      [celsius(75), '18s'],
    ]),
    { conditions: [{ kind: 'product', among: ['patties'] }] },
  ),
  from(scotland, 'reheating')(
    'reheat-scotland',
    'Reheated before service or sale',
    'Sch. 4, para. 3',
    held([[celsius(82), '0s']]),
    {
      conditions: [at('Scotland')],
      known: 'second hand',
      note: 'Unless that would spoil the food. Read in the identical text of 1995.',
    },
  ),
  irish('cooking')('cook-chill-cook', 'Cook-chill, cooked', 'Guidance Note 15', held([[celsius(75), '0s']]), {
    ...usual,
    conditions: [at('Ireland'), cookChill],
  }),
  irish('reheating')('cook-chill-reheat', 'Cook-chill, reheated', 'Guidance Note 15', held([[celsius(70), '0s']]), {
    ...usual,
    conditions: [at('Ireland'), cookChill],
  }),
  irish('cooling')(
    'cook-chill-cooling',
    'Cook-chill, from cooking to 3 °C',
    'Guidance Note 15',
    figure('time from the end of cooking to 3 °C (37.4 °F)', 'min', { max: 150 }),
    { ...usual, conditions: [at('Ireland'), cookChill] },
  ),

  old('cooking')('cook-chill-1989-cook', 'Cook-chill, cooked', 'cook-chill', held([[celsius(70), '2m']]), {
    conditions: [cookChill],
  }),
  old('cooling')(
    'cook-chill-1989-start',
    'Cook-chill, chilling begun',
    'cook-chill',
    figure('time from the end of cooking to the start of chilling', 'min', { max: 30 }),
    { conditions: [cookChill] },
  ),
  old('cooling')(
    'cook-chill-1989-cooling',
    'Cook-chill, from cooking to 3 °C',
    'cook-chill',
    figure('time from the end of cooking to 3 °C (37.4 °F)', 'min', { max: 120 }),
    { conditions: [cookChill], note: 'To begin within 30 min and then to 0-3 °C within 90 min.' },
  ),
  old('cold holding')(
    'cook-chill-1989-store-most',
    'Cook-chill, stored',
    'cook-chill',
    { ...atMost(celsius(3)), min: celsius(0) },
    { conditions: [cookChill] },
  ),
  old('keeping')(
    'cook-chill-1989-life',
    'Cook-chill, life',
    'cook-chill',
    figure('days, cooking and eating day counted', 'days', { max: 5 }),
    { conditions: [cookChill] },
  ),
  old('keeping')(
    'cook-chill-1989-excursion',
    'Cook-chill, warmer than 5 °C (41 °F): eat within',
    'cook-chill',
    figure('time to eat it', 'h', { max: 12 }),
    { conditions: [cookChill] },
  ),
  old('cold holding')(
    'cook-chill-1989-destroy',
    'Cook-chill, warmer than this: destroy',
    'cook-chill',
    atMost(celsius(10)),
    { conditions: [cookChill] },
  ),
  old('reheating')('cook-chill-1989-reheat', 'Cook-chill, reheated', 'cook-chill', held([[celsius(70), '2m']]), {
    conditions: [cookChill],
  }),
  old('frozen holding')(
    'cook-freeze-time',
    'Cook-freeze, to −5 °C (23 °F)',
    'cook-freeze',
    figure('time from entering the freezer to −5 °C', 'min', { max: 90 }),
    { conditions: [cookChill] },
  ),
  old('frozen holding')('frozen-holding', 'Cook-freeze, stored', 'cook-freeze', atMost(celsius(-18)), {
    conditions: [cookChill],
  }),
  from(trainers, 'cooling')(
    'cooling-caterer',
    'Ready for the refrigerator',
    'good practice',
    figure('time to be ready for the refrigerator', 'min', { max: 90 }),
  ),
  from(trainers, 'cooling')(
    'cooling-household',
    'Household: into the refrigerator',
    'consumer page',
    figure('time to the refrigerator', 'h', { max: 2 }),
  ),

  from(england, 'cold holding')('cold-holding', 'Chilled', 'Sch. 4, para. 2', atMost(celsius(8)), {
    ...usual,
    conditions: [notScotland],
    note: retail,
  }),
  from(wales, 'cold holding')(
    'cold-holding-display',
    'Out of the cold on display or service, once',
    'Sch. 4, para. 5',
    figure('time on display', 'h', { max: 4, signs: { max: '<' } }),
    { ...usual, conditions: [notScotland] },
  ),
  from(wales, 'hot holding')('hot-holding', 'Hot', 'Sch. 4, para. 6', atLeast(celsius(63)), {
    ...usual,
    conditions: [notScotland],
    note: retail,
  }),
  from(wales, 'hot holding')(
    'hot-holding-display',
    'Below 63 °C (145.4 °F) on display, once',
    'Sch. 4, para. 7',
    figure('time on display', 'h', { max: 2, signs: { max: '<' } }),
    { ...usual, conditions: [notScotland] },
  ),
  from(scotland, 'hot holding')('hot-holding-scotland', 'Hot', 'Sch. 4, para. 2', atLeast(celsius(63), true), {
    ...usual,
    conditions: [at('Scotland')],
    note: 'Else in a refrigerator or a cool ventilated place; no figure for cold.',
  }),
  from(trainers, 'cold holding')('cold-holding-target', 'Refrigerator, good practice', 'good practice', {
    ...atMost(celsius(5)),
    min: celsius(0),
  }),

  packs(
    'vacuum-days',
    'Vacuum or modified atmosphere, 3 to 8 °C, no other control',
    'default life',
    figure('days from the first packing', 'days', { max: 10 }),
  ),
  packs(
    'vacuum-days-fresh',
    'Plain cuts of fresh beef, lamb, pork in vacuum',
    'scope of December 2020',
    figure('days from the first packing', 'days', { max: 13 }),
    { note: 'Whether it covers mince, cured or seasoned meat was not stated.' },
  ),
  packs(
    'vacuum-heat',
    'More than 10 days: heated',
    'heat',
    held(BOTULINUM.map((minutes, index) => [celsius(80 + index), `${minutes}m`] as const)),
    {
      ...usual,
      known: 'read in the source',
      note: 'At the slowest-heating point; 90 °C for 10 min and equal lethality.',
    },
  ),
  packs('vacuum-ph', 'More than 10 days: acid', 'acid', figure('pH throughout', 'pH', { max: 5 }), {
    known: 'from memory',
  }),
  packs('vacuum-salt', 'More than 10 days: salt', 'salt', figure('salt in the aqueous phase', '%', { min: 3.5 }), {
    known: 'from memory',
  }),
  packs(
    'vacuum-aw',
    'More than 10 days: water activity',
    'water activity',
    figure('water activity throughout', 'aw', { max: 0.97 }),
    { known: 'from memory' },
  ),

  from(nitriteInBritain, 'curing')(
    'nitrite-heat-treated',
    'Nitrite added, heat-treated meat products',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 150, '150 mg/kg as NaNO₂'),
    { conditions: [britain, { kind: 'product', among: curedCooked }], note: ungoverned },
  ),
  from(nitriteInBritain, 'curing')(
    'nitrite-uncooked',
    'Nitrite added, meat products not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 150, '150 mg/kg as NaNO₂'),
    { conditions: [britain, { kind: 'product', among: [...uncookedCured, ...bacon] }], note: ungoverned },
  ),
  from(nitriteInBritain, 'curing')(
    'nitrite-sterilised',
    'Nitrite added, sterilised meat products',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 100, '100 mg/kg as NaNO₂'),
    { conditions: [britain, { kind: 'product', among: ['sterilised cured meat'] }], note: ungoverned },
  ),
  from(nitriteInBritain, 'curing')(
    'nitrate-uncooked',
    'Nitrate added, meat products not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrate', 150, '150 mg/kg as NaNO₃'),
    { conditions: [britain, { kind: 'product', among: [...uncookedCured, ...bacon] }], note: ungoverned },
  ),
  from(nitriteInIreland, 'curing')(
    'nitrite-heat-treated-ion',
    'Nitrite added, heat-treated meat products',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { conditions: [at('Northern Ireland', 'Ireland'), { kind: 'product', among: curedCooked }] },
  ),
  from(nitriteInIreland, 'curing')(
    'nitrite-uncooked-ion',
    'Nitrite added, meat products not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { conditions: [at('Northern Ireland', 'Ireland'), { kind: 'product', among: [...uncookedCured, ...bacon] }] },
  ),
];
