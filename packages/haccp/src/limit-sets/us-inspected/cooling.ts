import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import { cookedProducts, curedCooked } from '../product-class';
import * as stabilization from '../fsis-stabilization';
import { receivedChilled } from '../receiving';
import { cooled, figure, from, stage, type Work } from '../write-row';
import { performance, stabilization1999, stabilization2017, stabilization2021 } from './works';

const [f120, f80, f40] = [both(120, 48.9), both(80, 26.7), both(40, 4.4)];
const cooked: Condition = { kind: 'product', among: cookedProducts };
const curedOnly: Condition = { kind: 'product', among: curedCooked };
const nitrite100: Condition = { kind: 'nitrite', least: 100_000, per: 'meat block' };
const accelerator250: Condition = { kind: 'accelerator', least: 250_000, per: 'meat block' };
const untilShipped = 'Chilling goes on to 40 °F (4.4 °C) before shipping, which is a limit of its own.';

const sinceTheChange =
  'Since 14 December 2022 the edition of 1999 supports a plan only inside a scientific gap that the 2021 guideline ' +
  'opens, or with scientific support of one’s own (86 FR 71007)';
/** What the plan has to say before it may rest on an option of 1999. */
const supported: Condition = { kind: 'support', says: `${sinceTheChange}.` };
/** The gap is known second hand: an article of the agency’s own staff of 22 August 2023. */
const supportedFromCooking: Condition = {
  kind: 'support',
  says: `${sinceTheChange}. The gap for 120 to 55 °F in 6 h is said to be large-mass, non-intact, ready-to-eat product.`,
};

/** The stages of 1999 under the citation of 2021. */
const { source: _of1999, ...slowIn2021 } = stabilization.coolingCured;

const old = from(stabilization1999, 'cooling');
const next = from(stabilization2021, 'cooling');

export const cooling1999: readonly LimitRow[] = [
  old('cooling-any', 'Cooling, any product', 'option 1', stabilization.coolingUncured, {
    isDefault: true,
    conditions: [cooked, supported],
  }),
  old(
    'cooling-120-55',
    'Cooling from 120 to 55 °F',
    'option 2',
    stabilization.coolingFromCooking,
    {
      conditions: [cooked, supportedFromCooking],
      note: `More than 1 h between 120 and 80 °F makes compliance less certain. ${untilShipped}`,
    },
  ),
  old(
    'cooling-cured',
    'Slow cooling, cured product',
    'option 3, as quoted by the Canadian Food Inspection Agency',
    stabilization.coolingCured,
    { known: 'second hand', conditions: [curedOnly, nitrite100, supported] },
  ),
];

export const cooling2017: readonly LimitRow[] = [
  from(stabilization2017, 'cooling')(
    'cooling-any',
    'Cooling, uncured product',
    'uncured option, as reported by a trade article',
    cooled(stage(f120, f80, 1), stage(f80, f40, 5)),
    {
      conditions: [cooked],
      note: 'Superseded; not for new plans.',
    },
  ),
];

export const cooling2021: readonly LimitRow[] = [
  next('cooling-any', 'Cooling, any fully cooked product', 'option 1', stabilization.coolingUncured2021, {
    conditions: [cooked],
    note: 'The same figures as the 1999 option 1, which was read.',
  }),
  next(
    'cooling-120-55',
    'Cooling from 120 to 55 °F in two stages',
    'option 2',
    stabilization.coolingFromCookingStrict,
    { conditions: [cooked], note: untilShipped },
  ),
  next('cooling-cured', 'Slow cooling, cured product', 'option 3', slowIn2021, {
    conditions: [curedOnly, nitrite100, accelerator250],
  }),
];

const standard = from(performance, 'cooling');
const patties = 'For cooked patties 318.23(c)(1) is said to ask the same; it was not read.';
export const coolingStandards: readonly LimitRow[] = [
  standard(
    'cooling-growth-perfringens',
    'Growth of Clostridium perfringens while cooling',
    '318.17(a)(2), 381.150(a)(2)',
    figure('C. perfringens growth', 'log10', { max: 1 }),
    { note: patties },
  ),
  standard(
    'cooling-growth-botulinum',
    'Growth of Clostridium botulinum while cooling',
    '318.17(a)(2), 381.150(a)(2)',
    figure('C. botulinum growth', 'log10', { max: 0 }),
    { note: patties },
  ),
];

const practice: Work = {
  citation: 'Common practice',
  edition: 'no published source',
  validFrom: '2026',
  force: 'industry',
  known: 'from memory',
};
export const receivingRows: readonly LimitRow[] = [
  from(practice, 'receiving')(
    'received-chilled',
    'Chilled meat at receipt',
    'chilled meat at receipt',
    receivedChilled,
  ),
];
