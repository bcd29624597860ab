import type { Source } from '../limits/source';
import type { LethalitySet } from './lethality-set';

const source = (citation: string, edition: string, confirmed: boolean): Source => ({ citation, edition, confirmed });

/**
 * The law behind the printed 6.5-log meat column: 6.5 × D rounded up to the next whole minute (130–145 °F) or second
 * (146–157 °F) gives all 28 rows. It is always a little less strict than the row, so the row decides.
 */
export const salmonellaByTheMeatTable: LethalitySet = {
  name: 'Salmonella, by the meat table',
  organism: 'Salmonella',
  minutesPerLog: 1.714,
  referenceCelsius: 60,
  zCelsius: 5.56,
  source: source(
    'Worked out from FSIS-GD-2021-14, Table 2, p. 35, 6.5-log column; agrees with Goodfellow and Brown 1978, ' + 'J Food Prot 41:598-605',
    'December 2021',
    true,
  ),
  use: 'reference',
  note: 'Moist product. Up to 12 % less strict than the printed row.',
};

export const listeria70For2: LethalitySet = {
  name: 'Listeria monocytogenes, 70 °C for 2 min',
  organism: 'Listeria monocytogenes',
  minutesPerLog: 1 / 3,
  referenceCelsius: 70,
  zCelsius: 7.5,
  source: source(
    'z: Food Safety Authority of Ireland, equivalent cooks; 6 log at 70 °C in 2 min: NZ MPI Technical Paper 2016/05',
    '2018; 2016',
    true,
  ),
  use: 'reference',
  note: 'Chicken, steak and carrot; salt, cure and slow heating protect.',
};

export const listeriaHeatedSlowly: LethalitySet = {
  name: 'Listeria monocytogenes, heated slowly in a meat emulsion',
  organism: 'Listeria monocytogenes',
  minutesPerLog: 12.95,
  referenceCelsius: 60,
  zCelsius: 7.99,
  source: source('Quintavalla and Campanini, Lett Appl Microbiol, heated by 0.5 °C/min; abstract', '1991', true),
  use: 'comparison',
  note: 'D 12.95, 5.4 and 2.3 min at 60, 63 and 66 °C; z from these three. Shows what a slow come-up costs.',
};

export const listeriaInLiverSausage: LethalitySet = {
  name: 'Listeria monocytogenes, in liver sausage slurry',
  organism: 'Listeria monocytogenes',
  minutesPerLog: 2.4,
  referenceCelsius: 60,
  zCelsius: 6.2,
  source: source('Thermal destruction of L. monocytogenes in liver sausage slurry, Food Microbiol; abstract', '1991', true),
  use: 'comparison',
  note: 'D 8.9, 2.4 and 1.1 min at 57.2, 60 and 62.8 °C; another analysis of the same data gives z 4.65 °C.',
};

export const ecoliO157InBurgers: LethalitySet = {
  name: 'Escherichia coli O157, in burgers, 70 °C for 2 min',
  organism: 'Escherichia coli O157',
  minutesPerLog: 1 / 3,
  referenceCelsius: 70,
  zCelsius: 6,
  source: source('ACMSF ad hoc group, Report on the safe cooking of burgers, from a copy', 'March 2007', false),
  use: 'reference',
  note: '65 °C for 13.6 min, 75 °C for 18 s.',
};

const ofManyStudies = (organism: LethalitySet['organism'], where: string, log10Minutes: number, zCelsius: number): LethalitySet => ({
  name: `${organism}, mean of many studies${where}`,
  organism,
  minutesPerLog: 10 ** log10Minutes,
  referenceCelsius: 70,
  zCelsius,
  source: source('van Asselt and Zwietering, Int J Food Microbiol 107:73-82, as transcribed by others', '2006', false),
  use: 'mean',
  note: 'A mean: half of all cases are more resistant. Not for a decision.',
});

/** The two that are worked with come first. */
export const lethalitySets: readonly LethalitySet[] = [
  salmonellaByTheMeatTable,
  listeria70For2,
  listeriaHeatedSlowly,
  listeriaInLiverSausage,
  ecoliO157InBurgers,
  ofManyStudies('Listeria monocytogenes', '', -1.06, 7),
  ofManyStudies('Listeria monocytogenes', ', 10 % salt', 0.18, 9.2),
  ofManyStudies('Salmonella', '', -0.83, 9.1),
  ofManyStudies('Escherichia coli', '', -0.67, 10.6),
  ofManyStudies('Clostridium perfringens, vegetative', '; spores survive cooking', -0.42, 10.3),
];
