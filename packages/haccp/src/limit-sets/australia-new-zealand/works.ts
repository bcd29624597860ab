import type { Work } from '../write-row';

export const handling: Work = {
  citation: 'Australia, Food Standards Code, Standard 3.2.2',
  edition: 'as restated by the authorities, 2026',
  validFrom: '2026',
  force: 'law',
  known: 'second hand',
};
export const meat: Work = {
  citation: 'Australia, AS 4696 and its guidance, as quoted by a training page and Campden tables',
  edition: 'AS 4696:2023 (replaces 2007)',
  validFrom: '2023',
  force: 'standard',
  known: 'second hand',
};
export const additives: Work = {
  citation: 'Food Standards Code, Standard 1.3.1 and Schedule 15',
  edition: 'as of 13 September 2024',
  url: 'https://www.legislation.gov.au/F2015L00439/2024-09-13',
  validFrom: '2024-09-13',
  force: 'law',
  known: 'from memory',
};
export const template: Work = {
  citation: 'New Zealand, Ministry for Primary Industries, template food control plan',
  edition: '2017, restated in 2020',
  validFrom: '2017',
  force: 'guide',
  known: 'second hand',
};
export const fermentedMeat: Work = {
  citation: 'Food Standards Code, uncooked comminuted fermented meat',
  edition: 'Amendment 68, 2003',
  validFrom: '2003',
  force: 'law',
  known: 'read in the source',
};
