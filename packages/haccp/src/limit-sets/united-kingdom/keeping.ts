import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { curedCooked, uncookedCured, type ProductClass } from '../product-class';
import { atLeast, atMost, celsius, figure, from, held, ingoingAtMost } from '../write-row';
import { england, nitriteInBritain, nitriteInIreland, northernIreland, scotland, trainers, vacuumPacks, vacuumTraining, wales } from './works';
import { traditionalCures } from './traditional-cures';

const at = (...among: string[]): Condition => ({ kind: 'place', among });
const notScotland: Condition = { kind: 'place', among: ['England', 'Wales', 'Northern Ireland'] };
const retail =
  'Not for a plant to which Regulation (EC) 853/2004 applies; its figures are in the set of the European Union.';
const usual = { isDefault: true } as const;
const ungoverned = 'Inferred: the change of 2023 came after the United Kingdom had left. Check before use.';
const britain = at('England', 'Wales', 'Scotland');
/** Traditional cures have a residual limit instead of an added one. */
const uncooked: readonly ProductClass[] = [
  ...uncookedCured.filter((product) => product !== 'dry-cured ham'),
  'bacon, pumped',
  'bacon, immersed',
];
const heated = curedCooked.filter((product) => product !== 'ham, Wiltshire');

const packs = from(vacuumPacks, 'keeping');
/** Non-proteolytic Clostridium botulinum, 6-log: minutes at 80 to 100 °C. */
const BOTULINUM = [129, 100, 77, 60, 46, 36, 28, 22, 17, 13, 10, 7.9, 6.3, 5, 4, 3.2, 2.5, 2, 1.6, 1.3, 1];

export const keepingRows: readonly LimitRow[] = [
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
  from(northernIreland, 'cold holding')(
    'cold-holding-display',
    'Out of the cold on display or service, once',
    'Sch. 4, para. 5',
    figure('time on display', 'h', { max: 4, signs: { max: '<' } }),
    { conditions: [notScotland], note: 'Read in the regulations of Northern Ireland alone, for all three nations.' },
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
  from(vacuumTraining, 'keeping')(
    'vacuum-heat',
    'More than 10 days: heated',
    'heat',
    held(BOTULINUM.map((minutes, index) => [celsius(80 + index), `${minutes}m`] as const)),
    {
      ...usual,
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
    { conditions: [britain, { kind: 'product', among: heated }], note: ungoverned },
  ),
  from(nitriteInBritain, 'curing')(
    'nitrite-uncooked',
    'Nitrite added, meat products not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 150, '150 mg/kg as NaNO₂'),
    { conditions: [britain, { kind: 'product', among: uncooked }], note: ungoverned },
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
    { conditions: [britain, { kind: 'product', among: uncooked }], note: ungoverned },
  ),
  from(nitriteInIreland, 'curing')(
    'nitrite-heat-treated-ion',
    'Nitrite added, heat-treated meat products',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { conditions: [at('Northern Ireland', 'Ireland'), { kind: 'product', among: heated }] },
  ),
  from(nitriteInIreland, 'curing')(
    'nitrite-uncooked-ion',
    'Nitrite added, meat products not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { conditions: [at('Northern Ireland', 'Ireland'), { kind: 'product', among: uncooked }] },
  ),
  ...traditionalCures,
];
