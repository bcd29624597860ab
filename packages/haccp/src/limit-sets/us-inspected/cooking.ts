import * as meat from '../fsis-meat';
import { comeUpWithinSixHours } from '../fsis-come-up';
import { cookedPoultry, cookedPoultry7Log, type Poultry } from '../fsis-poultry';
import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import { cookedMeat, cookedPoultryProducts } from '../product-class';
import { atLeast, attest, figure, from, held } from '../write-row';
import { cookingGuideline, performance } from './works';

const cooking = from(cookingGuideline, 'cooking');
const target = from(performance, 'cooking');
const forMeat: Condition = { kind: 'product', among: cookedMeat };
const forPoultry: Condition = { kind: 'product', among: cookedPoultryProducts };
const humidityAndComeUp: Condition = {
  kind: 'statement',
  says: 'Humidity and come-up time are controlled too (pp. 24-26).',
};
/** Table 2 and Table 6 print 137 and 139 °F a tenth of a degree Celsius above the true conversion. */
const meatTable = { conditions: [forMeat, humidityAndComeUp], printedOdd: [both(137, 58.4), both(139, 59.5)] };
const SPECIES: readonly (readonly [Poultry, string, string])[] = [
  ['chicken', 'Cooked chicken', 'Table 3, p. 37'],
  ['turkey', 'Cooked turkey', 'Table 4, p. 38'],
  ['other', 'Cooked poultry, other or mixed species', 'Tables 3 and 4, pp. 36-38'],
];
const poultryTable = { conditions: [forPoultry, humidityAndComeUp] };

const byFat = SPECIES.flatMap(([species, title, paragraph]) =>
  Array.from({ length: 12 }, (_, index) => {
    const fat = index + 1;
    const said = fat === 12 ? '12 % fat, above 12 % or unknown' : `${fat} % fat`;
    const id = `cooked-${species === 'other' ? 'poultry' : species}-7-log-${fat}-fat`;
    return cooking(
      id,
      `${title}, ${said}, 7-log Salmonella`,
      `${paragraph}, ${fat} % fat`,
      cookedPoultry(species, fat),
      poultryTable,
    );
  }),
);

/** FSIS Appendix A, 2021: tables by row, targets, poultry by species and fat, come-up. */
export const cookingRows: readonly LimitRow[] = [
  target(
    'target-poultry',
    'Any product with poultry in it: 7-log Salmonella',
    '381.150(a)(1)',
    figure('Salmonella reduction', 'log10', { min: 7 }),
    { conditions: [forPoultry] },
  ),
  target(
    'target-roast-beef',
    'Roast, cooked and corned beef: 6.5-log Salmonella',
    '318.17(a)(1)',
    figure('Salmonella reduction', 'log10', { min: 6.5 }),
    { conditions: [{ kind: 'product', among: ['roast beef'] }] },
  ),
  target(
    'target-patties',
    'Cooked uncured patties: 5-log Salmonella',
    '318.23',
    figure('Salmonella reduction', 'log10', { min: 5 }),
    { known: 'second hand', conditions: [{ kind: 'product', among: ['patties'] }], note: 'As FSIS-GD-2021-14, p. 18, gives it.' },
  ),
  cooking(
    'target-cooked-meat',
    'Other cooked meat: 6.5-log Salmonella recommended',
    'p. 18',
    figure('Salmonella reduction', 'log10', { min: 6.5 }),
    { conditions: [forMeat] },
  ),
  cooking(
    'target-shelf-stable',
    'Shelf-stable meat: 5-log Salmonella recommended',
    'pp. 18, 20, 57',
    figure('Salmonella reduction', 'log10', { min: 5 }),
    { conditions: [{ kind: 'product', among: ['dry sausage', 'semi-dry sausage', 'jerky'] }] },
  ),
  cooking('cooked-meat-6.5-log', 'Cooked meat, 6.5-log Salmonella', 'Table 2, p. 35', meat.cookedMeat65Log, {
    ...meatTable,
    isDefault: true,
  }),
  cooking('cooked-meat-7-log', 'Cooked meat, 7-log Salmonella', 'Table 2, p. 35', meat.cookedMeat7Log, meatTable),
  cooking('cooked-meat-5-log', 'Shelf-stable meat, 5-log Salmonella', 'Table 6, p. 59', meat.cookedMeat5Log, {
    ...meatTable,
    conditions: [
      { kind: 'product', among: [...cookedMeat, 'dry sausage', 'semi-dry sausage', 'jerky'] },
      {
        kind: 'statement',
        says: 'Where the product is not shelf stable, the plan documents why 5-log is enough (p. 59, note 15).',
      },
      humidityAndComeUp,
    ],
  }),
  cooking(
    'cooked-poultry-7-log',
    'Cooked poultry or mixed species, fat unknown, 7-log Salmonella',
    'Tables 3 and 4, pp. 36-39',
    cookedPoultry7Log,
    { ...poultryTable, isDefault: true },
  ),
  ...byFat,
  cooking('poultry-roll-uncured', 'Cooked poultry, older option', 'p. 39', held([[both(160, 71.1), '0s']]), {
    conditions: [{ kind: 'product', among: ['cooked poultry'] }, humidityAndComeUp],
    note: 'Still allowed; the tables are preferred.',
  }),
  cooking('poultry-roll-cured', 'Cured and smoked poultry, older option', 'p. 39', held([[both(155, 68.3), '0s']]), {
    conditions: [{ kind: 'product', among: ['cooked cured poultry'] }, humidityAndComeUp],
    note: 'Still allowed; the tables are preferred.',
  }),
  target(
    'patties-318.23',
    'Cooked uncured patties',
    '318.23(b)',
    held([
      [both(151, 66.1), '41s'],
      [both(152, 66.7), '32s'],
      [both(153, 67.2), '26s'],
      [both(154, 67.8), '20s'],
      [both(155, 68.3), '16s'],
      [both(156, 68.9), '13s'],
      [both(157, 69.4), '10s'],
    ]),
    {
      known: 'from memory',
      conditions: [{ kind: 'product', among: ['patties'] }],
      note: 'Title and table are there; the values are remembered.',
    },
  ),
  from(cookingGuideline, 'come-up')('come-up-6-h', 'Between 50 and 130 °F', 'pp. 23-25', comeUpWithinSixHours, {
    isDefault: true,
    note:
      'A second cook starts the clock again only if the first reached a lethal time and temperature. ' +
      'Fermented product cooked later may rest on degree-hours.',
  }),
  cooking(
    'growth-toxin',
    'Staphylococcus aureus growth after a long come-up',
    'pp. 67-77',
    figure('modelled S. aureus growth', 'log10', { max: 3, signs: { max: '<' } }),
    { note: 'For release after a deviation; a process is planned for 2 log or less (pp. 24 and 80).' },
  ),
  cooking(
    'growth-vegetative',
    'Growth of vegetative pathogens after a long come-up',
    'pp. 67-77',
    figure('modelled growth', 'log10', { max: 1 }),
  ),
  from(cookingGuideline, 'humidity')(
    'humidity-endpoint',
    'Steam or a sealed oven only with an endpoint of',
    'Table 1, p. 26',
    atLeast(both(145, 62.8)),
  ),
  ...humidityOptions(),
];

function humidityOptions(): LimitRow[] {
  const row = from(cookingGuideline, 'humidity');
  return [
    row(
      'humidity-1-steam',
      'Option 1: live steam',
      'Table 1, p. 26',
      attest(
        'Live steam was let in for half the cooking time or 1 h, whichever is longer; its times on ' +
          'and off are recorded.',
      ),
    ),
    row(
      'humidity-2-sealed',
      'Option 2: sealed oven',
      'Table 1, p. 26',
      attest(
        'Doors and dampers were shut for at least half the cooking time or 1 h, whichever is longer; ' +
          'their times are recorded.',
      ),
    ),
    row(
      'humidity-3-quarter',
      'Option 3: 90 % for a quarter',
      'Table 1, p. 26',
      attest('Relative humidity was at least 90 % for a quarter of the cooking time or 1 h, whichever is longer.'),
    ),
    row(
      'humidity-4-all',
      'Option 4: 90 % throughout',
      'Table 1, p. 26',
      attest('Relative humidity was 90 % for the whole cooking time.'),
    ),
    row(
      'humidity-not-immersed',
      'No humidity: immersed',
      'pp. 31-33',
      attest('The product was immersed in liquid for the whole of the cooking.'),
    ),
    row(
      'humidity-not-bag',
      'No humidity: sealed bag',
      'pp. 31-33',
      attest('The product was in a sealed moisture-proof bag for the whole of the cooking.'),
    ),
    row(
      'humidity-not-casing',
      'No humidity: casing that holds moisture',
      'pp. 31-33',
      attest('The product was in a casing that holds moisture: natural, cellulose, collagen, fibrous or plastic.'),
    ),
    row(
      'humidity-not-large',
      'No humidity: large pieces',
      'pp. 31-33',
      attest('Every piece weighed at least 10 lb (4.5 kg) and the oven was at least 250 °F (121 °C) throughout.'),
    ),
    row(
      'humidity-not-direct',
      'No humidity: direct heat',
      'pp. 31-33',
      attest('The product was cooked by direct heat: grill, broiler, flame or heating coil.'),
    ),
    row(
      'humidity-not-patties',
      'No humidity: patties by direct heat',
      'pp. 31-33',
      attest('Patties under 9 CFR 318.23 were cooked by direct heat.'),
    ),
  ];
}
