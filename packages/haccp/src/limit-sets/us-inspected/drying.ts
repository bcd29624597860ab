import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { both } from '../printed';
import type { ProductClass } from '../product-class';
import { figure, from, held } from '../write-row';
import { driedMeat, fermented, jerky, trichinae } from './works';

const fermenting = from(driedMeat, 'fermenting');
const keeping = from(driedMeat, 'keeping');
const inJerky = from(jerky, 'keeping');
const only = (...among: ProductClass[]): { conditions: Condition[] } => ({ conditions: [{ kind: 'product', among }] });
const dry = only('dry sausage');
const semiDry = only('semi-dry sausage');
const fermentedSausage = only('dry sausage', 'semi-dry sausage');
const hottest = 'The band follows the highest chamber temperature before pH 5.3; degrees above 60 °F (15.6 °C) count.';

/** Growth limits of FSIS training material, pp. 157-158: least water activity and pH in thousandths of a unit. */
const leastWater = [
  ['campylobacter', 0.98],
  ['botulinum-non-proteolytic', 0.96],
  ['o157', 0.95],
  ['salmonella', 0.94],
  ['botulinum-proteolytic', 0.93],
  ['perfringens', 0.93],
  ['listeria', 0.92],
  ['aureus-without-air', 0.9],
  ['aureus', 0.86],
  ['aspergillus-flavus', 0.8],
] as const;
const leastAcid = [
  ['perfringens', 5],
  ['campylobacter', 4.9],
  ['botulinum-proteolytic', 4.6],
  ['o157', 4],
  ['listeria', 4.4],
  ['aureus', 4],
  ['salmonella', 3.8],
] as const;

export const dryingRows: readonly LimitRow[] = [
  fermenting('fermented-ph', 'Fermented until', 'p. 164', figure('pH', 'pH', { max: 5.3 }), {
    ...fermentedSausage,
    isDefault: true,
  }),
  fermenting(
    'degree-hours-cool',
    'Degree-hours, highest below 90 °F (32.2 °C)',
    'p. 164',
    figure('degree-hours', '°F·h', { max: 1200 }),
    { ...fermentedSausage, isDefault: true, note: hottest },
  ),
  fermenting(
    'degree-hours-warm',
    'Degree-hours, highest 90-100 °F (32.2-37.8 °C)',
    'p. 164',
    figure('degree-hours', '°F·h', { max: 1000 }),
    { ...fermentedSausage, isDefault: true, note: hottest },
  ),
  fermenting(
    'degree-hours-hot',
    'Degree-hours, highest above 100 °F (37.8 °C)',
    'p. 164',
    figure('degree-hours', '°F·h', { max: 900 }),
    { ...fermentedSausage, isDefault: true, note: hottest },
  ),
  fermenting(
    'fermented-then-heated',
    'Fermented below pH 5.0, then 128 °F',
    'p. 167, validated example',
    held([[both(128, 53.3), '60m']]),
    semiDry,
  ),
  keeping(
    'mpr-dry',
    'Moisture to protein, dry sausage',
    'pp. 160, 168',
    figure('moisture to protein', 'ratio', { max: 1.9 }),
    { ...dry, isDefault: true, note: 'A labelling standard, no proof of safety.' },
  ),
  keeping(
    'mpr-semi-dry',
    'Moisture to protein, shelf-stable semi-dry sausage',
    'pp. 160, 168',
    figure('moisture to protein', 'ratio', { max: 3.1 }),
    { ...semiDry, isDefault: true, note: 'Together with pH ≤ 5.0.' },
  ),
  keeping('ph-semi-dry', 'pH, shelf-stable semi-dry sausage', 'pp. 160, 168', figure('pH', 'pH', { max: 5 }), {
    ...semiDry,
    isDefault: true,
  }),
  keeping(
    'mpr-jerky',
    'Moisture to protein, jerky',
    'pp. 160, 168',
    figure('moisture to protein', 'ratio', { max: 0.75 }),
    { ...only('jerky'), isDefault: true },
  ),
  keeping(
    'mpr-thuringer',
    'Moisture to protein, Thuringer',
    'p. 168',
    figure('moisture to protein', 'ratio', { max: 3.7 }),
    { ...semiDry },
  ),
  keeping(
    'mpr-pepperoni',
    'Moisture to protein, pepperoni',
    'as printed by Ohio State University',
    figure('moisture to protein', 'ratio', { max: 1.6 }),
    { ...dry, known: 'second hand' },
  ),
  keeping(
    'mpr-genoa',
    'Moisture to protein, Genoa salami',
    'as printed by Ohio State University',
    figure('moisture to protein', 'ratio', { max: 2.1 }),
    { ...dry, known: 'second hand', note: 'From memory it is 2.3 elsewhere: open.' },
  ),
  inJerky(
    'aw-air',
    'Shelf stable in air',
    'pp. 15-16',
    figure('water activity', 'aw', { max: 0.85 }),
    only('jerky', 'dry sausage'),
  ),
  inJerky('aw-vacuum', 'Shelf stable in vacuum', 'pp. 15-16', figure('water activity', 'aw', { max: 0.91 }), {
    ...only('jerky', 'dry sausage'),
    note: 'Above 0.85: labelled “Refrigerate After Opening”.',
  }),
  from(fermented, 'fermenting')(
    'target-fermented-salmonella',
    'Fermented, salt-cured, dried: Salmonella and STEC',
    'lethality',
    figure('Salmonella and STEC reduction', 'log10', { min: 5 }),
    { ...only('dry sausage', 'semi-dry sausage', 'dry-cured ham', 'jerky'), isDefault: true },
  ),
  from(fermented, 'fermenting')(
    'target-fermented-listeria',
    'Fermented, salt-cured, dried: Listeria monocytogenes',
    'lethality',
    figure('L. monocytogenes reduction', 'log10', { min: 3 }),
    { ...only('dry sausage', 'semi-dry sausage', 'dry-cured ham', 'jerky'), isDefault: true },
  ),
  ...leastWater.map(([organism, aw]) =>
    keeping(
      `growth-aw-${organism}`,
      `No growth at a lower water activity: ${organism}`,
      'p. 157',
      figure('least water activity for growth', 'aw', { min: aw }),
    ),
  ),
  ...leastAcid.map(([organism, pH]) =>
    keeping(
      `growth-ph-${organism}`,
      `No growth at a lower pH: ${organism}`,
      'p. 158',
      figure('least pH for growth', 'pH', { min: pH }),
      organism === 'o157' ? { note: 'Printed as 4.0 to 4.4.' } : {},
    ),
  ),
];

const pork = from(trichinae, 'frozen holding');
const frozen = [
  ['5 °F (−15 °C)', 20, 30],
  ['−10 °F (−23.3 °C)', 10, 20],
  ['−20 °F (−28.9 °C)', 6, 12],
] as const;
const centre = [
  ['0 °F (−17.8 °C)', 106],
  ['−5 °F (−20.6 °C)', 82],
  ['−10 °F (−23.3 °C)', 63],
  ['−15 °F (−26.1 °C)', 48],
  ['−20 °F (−28.9 °C)', 35],
  ['−25 °F (−31.7 °C)', 22],
  ['−30 °F (−34.5 °C)', 8],
  ['−35 °F (−37.2 °C)', 0.5],
] as const;

/** Prescribed until 2018. Colder is less time, so these are figures to compare, not a table of holding times. */
export const trichinaeRows: readonly LimitRow[] = [
  ...frozen.flatMap(([at, thin, thick], index) => [
    pork(
      `trichinae-group-1-${index + 1}`,
      `Pork up to 6 in (15 cm) thick, frozen at ${at}`,
      '(c)(2), group 1',
      figure(`days at or below ${at}`, 'days', { min: thin }),
    ),
    pork(
      `trichinae-group-2-${index + 1}`,
      `Pork over 6 to 27 in (69 cm) thick, frozen at ${at}`,
      '(c)(2), group 2',
      figure(`days at or below ${at}`, 'days', { min: thick }),
    ),
  ]),
  ...centre.map(([at, hours], index) =>
    pork(
      `trichinae-centre-${index + 1}`,
      `Pork, centre at ${at}`,
      '(c)(2), alternative',
      figure(`hours at or below ${at}`, 'h', { min: hours }),
    ),
  ),
  from(trichinae, 'cooking')(
    'trichinae-heated',
    'Pork, heated against trichinae',
    '(c)(1)',
    held([
      [{ '°F': 12_000 }, '1260m'],
      [{ '°F': 12_200 }, '570m'],
      [{ '°F': 12_400 }, '270m'],
      [{ '°F': 12_600 }, '132m'],
      [{ '°F': 12_800 }, '60m'],
      [{ '°F': 13_000 }, '30m'],
      [{ '°F': 13_200 }, '15m'],
      [{ '°F': 13_400 }, '6m'],
      [{ '°F': 13_600 }, '3m'],
      [{ '°F': 13_800 }, '2m'],
      [{ '°F': 14_000 }, '1m'],
      [{ '°F': 14_200 }, '1m'],
      [{ '°F': 14_400 }, '0s'],
    ]),
    { known: 'from memory', note: 'Every row of the FSIS meat tables is stricter.' },
  ),
];
