import type { Source } from '../limits/source';

export const fsisCooking = (place: string): Source => ({
  citation: `FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, ${place}`,
  edition: 'December 2021',
  confirmed: true,
  url: 'https://www.fsis.usda.gov/guidelines/2017-0008',
});

/** It binds where a jurisdiction has adopted it, in the edition adopted. */
export const foodCode = (section: string): Source => ({
  citation: `FDA Food Code, ${section}`,
  edition: '2022',
  confirmed: true,
  url: 'https://www.fda.gov/food/fda-food-code/food-code-2022',
});

export const curingRule = (place: string): Source => ({
  citation: `9 CFR 424.21(c), ${place}`,
  edition: '1 January 2024',
  confirmed: true,
  url: 'https://www.govinfo.gov/content/pkg/CFR-2024-title9-vol2/pdf/CFR-2024-title9-vol2-sec424-21.pdf',
});
