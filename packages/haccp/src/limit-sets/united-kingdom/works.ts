import type { Work } from '../write-row';

const asRead = { edition: 'as read in 2026', validFrom: '2026' } as const;

export const england: Work = {
  citation: 'Food Safety and Hygiene (England) Regulations 2013, SI 2013/2996',
  edition: 'as made',
  url: 'https://www.legislation.gov.uk/uksi/2013/2996/schedule/4/paragraph/2/made',
  validFrom: '2013',
  force: 'law',
  known: 'read in the source',
};
/** Paragraphs 1, 2, 3, 6 and 7 were read. Northern Ireland's regulations of the same year have the same schedule. */
export const wales: Work = {
  citation: 'Food Hygiene (Wales) Regulations 2006, WSI 2006/31',
  edition: 'as read in 2026',
  url: 'https://www.legislation.gov.uk/wsi/2006/31/schedule/4',
  validFrom: '2006',
  force: 'law',
  known: 'read in the source',
};
/** Paragraph 5 was read here and in none of the other nations’ regulations. */
export const northernIreland: Work = {
  citation: 'Food Hygiene Regulations (Northern Ireland) 2006, SR 2006/3',
  edition: 'as made',
  url: 'https://www.legislation.gov.uk/nisr/2006/3/schedule/4/paragraph/5/made',
  validFrom: '2006',
  force: 'law',
  known: 'second hand',
};
export const scotland: Work = {
  citation: 'Food Hygiene (Scotland) Regulations 2006, SSI 2006/3',
  edition: 'as made',
  url: 'https://www.legislation.gov.uk/ssi/2006/3/schedule/4/made',
  validFrom: '2006',
  force: 'law',
  known: 'read in the source',
};
export const cookingAdvice: Work = {
  citation: 'Food Standards Agency, cooking times and temperatures, as restated by trainers',
  ...asRead,
  force: 'guide',
  known: 'second hand',
};
export const burgers: Work = {
  citation: 'ACMSF Ad Hoc Group on Safe Cooking of Burgers',
  edition: 'March 2007',
  validFrom: '2007-03',
  force: 'guide',
  known: 'second hand',
};
export const irishCookChill: Work = {
  citation: 'Food Safety Authority of Ireland, Cook-chill systems in the food service sector',
  ...asRead,
  url: 'https://www.fsai.ie/publications/guidance-note-15-cook-chill-systems-in-the-food-se',
  force: 'guide',
  known: 'read in the source',
};
export const cookChill1989: Work = {
  citation: 'Department of Health, Guidelines on cook-chill and cook-freeze catering systems',
  edition: '1989',
  validFrom: '1989',
  force: 'guide',
  known: 'from memory',
};
export const trainers: Work = {
  citation: 'Training pages and council guidance',
  ...asRead,
  force: 'industry',
  known: 'second hand',
};
export const vacuumPacks: Work = {
  citation:
    'FSA/FSS, Safety and shelf-life of vacuum and modified atmosphere packed chilled foods ' +
    '(non-proteolytic Clostridium botulinum)',
  edition: 'December 2020',
  validFrom: '2020-12',
  force: 'guide',
  known: 'second hand',
};
/** The agency’s own page on vacuum packing prints the table of heat; the guidance itself was read in a copy. */
export const vacuumTraining: Work = {
  citation: 'FSA, Vacuum packing training, module 3 (non-proteolytic Clostridium botulinum)',
  edition: 'as read in 2026',
  url: 'https://vacuumpackingtraining.food.gov.uk/module3/section2/',
  validFrom: '2026',
  force: 'guide',
  known: 'read in the source',
};
/** Read in the text of 3 December 2012; what stands in Great Britain today was not, so second hand for today. */
export const curesOf2012: Work = {
  citation: 'Regulation (EC) 1333/2008, Annex II, as assimilated in Great Britain',
  edition: 'text of 3 December 2012',
  validFrom: '2012-12-03',
  force: 'law',
  known: 'second hand',
};
export const nitriteInBritain: Work = {
  citation: 'Regulation (EC) 1333/2008 as assimilated in Great Britain',
  ...asRead,
  force: 'law',
  known: 'from memory',
};
export const nitriteInIreland: Work = {
  citation: 'Regulation (EC) 1333/2008 as amended by (EU) 2023/2108',
  edition: 'from 9 October 2025',
  validFrom: '2025-10-09',
  force: 'law',
  known: 'second hand',
};
