import type { Work } from '../write-row';

export const hygiene: Work = {
  citation: 'Regulation (EC) 853/2004, Annex III',
  edition: 'as read in 2026, partly through a national interpretation',
  validFrom: '2004',
  force: 'law',
  known: 'second hand',
};
export const microbiology: Work = {
  citation: 'Regulation (EC) 2073/2005, Annex I',
  edition: 'table as replaced by (EC) 1441/2007; its notes in the texts of 2014 and 2020',
  validFrom: '2005',
  force: 'law',
  known: 'read in the source',
};
const additives = (edition: string, validFrom: string, known: Work['known']): Work => ({
  citation: 'Regulation (EC) 1333/2008, Annex II',
  edition,
  validFrom,
  force: 'law',
  known,
});
/** As EFSA tabulated it in 2017 and the schedule of SI 2007/1778 has it; the regulation itself was read in no whole. */
export const before = additives('until 9 October 2025, as tabulated by EFSA in 2017', '2008', 'second hand');
export const after = additives('as amended by (EU) 2023/2108', '2025-10-09', 'second hand');
