import type { Work } from '../write-row';

export const foodRegulations: Work = {
  citation: 'Safe Food for Canadians Regulations, SOR/2018-108',
  edition: 'as of 19 September 2025',
  url: 'https://laws-lois.justice.gc.ca/eng/regulations/SOR-2018-108/',
  validFrom: '2025-09-19',
  force: 'law',
  known: 'read in the source',
};
export const drugRegulations: Work = {
  citation: 'Food and Drug Regulations, C.R.C., c. 870',
  edition: 'as of 5 June 2026',
  url: 'https://laws-lois.justice.gc.ca/eng/regulations/C.R.C.,_c._870/',
  validFrom: '2026-06-05',
  force: 'law',
  known: 'read in the source',
};
export const ontario: Work = {
  citation: 'Ontario Meat Plant Guidelines',
  edition: 'as read in 2026',
  url: 'https://www.ontario.ca/document/meat-plant-guidelines/appendices',
  validFrom: '2026',
  force: 'guide',
  known: 'read in the source',
};
/** Withdrawn, and still used as a benchmark. */
export const archived: Work = {
  citation: 'CFIA Meat Hygiene Manual of Procedures, ch. 4 (archived)',
  edition: 'archived, as read in 2026',
  validFrom: '2026',
  force: 'archived',
  known: 'read in the source',
};
/** The figures it prints were quoted by others on 2 August 2026; the page itself was not read. */
export const driedMeatAdvice: Work = {
  citation: 'CFIA, Preventive control recommendations for manufacturing fermented and dried meat products',
  edition: 'as quoted on 2 August 2026',
  validFrom: '2026',
  force: 'guide',
  known: 'second hand',
};
export const healthUnit: Work = {
  citation: 'Eastern Ontario Health Unit, Critical Control Points to monitor with hazardous food',
  edition: 'as read in 2026',
  validFrom: '2026',
  force: 'guide',
  known: 'read in the source',
};
export const quebec: Work = {
  citation: 'Québec, Regulation respecting food, P-29, r. 1',
  edition: 'as read in 2026',
  validFrom: '2026',
  force: 'law',
  known: 'read in the source',
};
export const redMeat: Work = {
  citation: 'CFIA, Refrigeration of red meat products',
  edition: 'as read in 2026',
  validFrom: '2026',
  force: 'guide',
  known: 'read in the source',
};
export const preservatives: Work = {
  citation: 'Health Canada, List of Permitted Preservatives',
  edition: '2016, in a copy',
  validFrom: '2016',
  force: 'law',
  known: 'second hand',
};
export const listeriaPolicy: Work = {
  citation: 'Health Canada, Policy on Listeria monocytogenes in ready-to-eat foods',
  edition: '2023',
  validFrom: '2023-10-01',
  force: 'guide',
  known: 'from memory',
};
