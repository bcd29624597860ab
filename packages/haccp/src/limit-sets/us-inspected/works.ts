import type { Work } from '../write-row';

/** Appendix A, the edition the agency expects since 14 December 2022 (86 FR 71007). */
export const cookingGuideline: Work = {
  citation: 'FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14',
  edition: 'December 2021',
  url: 'https://www.fsis.usda.gov/guidelines/2017-0008',
  validFrom: '2021-12-14',
  force: 'guide',
  known: 'read in the source',
};
/** Its option table could not be opened: every row of it is unconfirmed. */
export const stabilization2021: Work = {
  citation: 'FSIS Stabilization Guideline for Meat and Poultry Products (Revised Appendix B), FSIS-GD-2021-13',
  edition: 'December 2021',
  url: 'https://www.fsis.usda.gov/guidelines/2017-0007',
  validFrom: '2021-12-14',
  force: 'guide',
  known: 'from memory',
};
export const stabilization2017: Work = {
  citation: 'FSIS Compliance Guideline for Stabilization (Revised Appendix B)',
  edition: 'June 2017',
  url: 'https://provisioneronline.com/articles/111185-optimizing-cooling-for-ideal-efficiencies',
  validFrom: '2017-06',
  force: 'guide',
  known: 'second hand',
};
export const stabilization1999: Work = {
  citation: 'FSIS Compliance Guidelines for Cooling Heat-Treated Meat and Poultry Products (Appendix B)',
  edition: 'January 1999, updated June 1999',
  validFrom: '1999-01',
  force: 'guide',
  known: 'read in the source',
};
export const ingredients: Work = {
  citation: '9 CFR 424.21(c)',
  edition: '1 January 2024',
  url: 'https://www.govinfo.gov/content/pkg/CFR-2024-title9-vol2/pdf/CFR-2024-title9-vol2-sec424-21.pdf',
  validFrom: '2024-01-01',
  force: 'law',
  known: 'read in the source',
};
export const baconRule: Work = {
  citation: '9 CFR 424.22(b)',
  edition: '1 January 2024',
  url: 'https://www.govinfo.gov/content/pkg/CFR-2024-title9-vol2/pdf/CFR-2024-title9-vol2-sec424-22.pdf',
  validFrom: '2024-01-01',
  force: 'law',
  known: 'second hand',
};
export const handbook: Work = {
  citation: 'FSIS Directive 7620.3, Processing Inspectors’ Calculations Handbook',
  edition: 'revised 1995',
  url: 'https://www.fsis.usda.gov/policy/fsis-directives/7620.3',
  validFrom: '1995',
  force: 'guide',
  known: 'second hand',
};
/** Definitions and standards of identity, 9 CFR part 319. */
export const standards: Work = {
  citation: '9 CFR part 319',
  edition: 'as read in 2026',
  validFrom: '2026',
  force: 'law',
  known: 'from memory',
};
export const performance: Work = {
  citation: '9 CFR 318.17, 318.23 and 381.150',
  edition: 'as read in 2026',
  validFrom: '1999',
  force: 'law',
  known: 'read in the source',
};
export const driedMeat: Work = {
  citation: 'FSIS training material “Principles of Preservation of Shelf-Stable Dried Meat Products”',
  edition: '11 May 2005',
  validFrom: '2005-05-11',
  force: 'guide',
  known: 'read in the source',
};
export const jerky: Work = {
  citation: 'FSIS Compliance Guideline for Meat and Poultry Jerky',
  edition: '2014',
  validFrom: '2014',
  force: 'guide',
  known: 'second hand',
};
export const fermented: Work = {
  citation: 'FSIS Ready-to-Eat Fermented, Salt-Cured, and Dried Products Guideline, FSIS-GD-2023-0002',
  edition: 'May 2023',
  url: 'https://www.federalregister.gov/documents/2023/05/05/2023-09614/',
  validFrom: '2023-05-05',
  force: 'guide',
  known: 'read in the source',
};
/** Prescribed treatments, removed from the rule on 30 July 2018 and still used as support. */
export const trichinae: Work = {
  citation: '9 CFR 318.10 as it stood until 30 July 2018',
  edition: 'removed by the final rule of 31 May 2018',
  validFrom: '1954',
  force: 'archived',
  known: 'second hand',
};
