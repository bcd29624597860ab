import type { CoolingLimit, CoolingStage, Source } from '../limits/limit';
import { both } from './printed';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

const HOUR = 3600;

/**
 * Cooling options. The agency expects the 2021 edition since 14 December 2022 (86 FR 71007); its option table could not
 * be read in the original, so the options taken from it are marked unconfirmed until a person has read the page.
 */
const appendixB1999 = (option: string, confirmed: boolean): Source => ({
  citation: `FSIS Compliance Guidelines for Cooling Heat-Treated Meat and Poultry Products (Appendix B), ${option}`,
  edition: 'January 1999, updated June 1999',
  confirmed,
});
const appendixB2021 = (option: string): Source => ({
  citation:
    'FSIS Stabilization Guideline for Meat and Poultry Products (Revised Appendix B), ' + `FSIS-GD-2021-13, ${option}`,
  edition: 'December 2021',
  confirmed: false,
  url: 'https://www.fsis.usda.gov/guidelines/2017-0007',
});

const fastStages: CoolingStage[] = [
  { from: both(130, 54.4), to: both(80, 26.7), withinSeconds: 1.5 * HOUR, counted: 'stage' },
  { from: both(80, 26.7), to: both(40, 4.4), withinSeconds: 5 * HOUR, counted: 'stage' },
];

/** Any fully or partly cooked product, cured or not: 6.5 h in all. */
export const coolingUncured: CoolingLimit = {
  kind: 'cooling',
  stages: fastStages,
  longestGapSeconds: LONGEST_GAP_SECONDS.cooling,
  source: appendixB1999('option 1', true),
};

/** The same figures as the 1999 option 1. */
export const coolingUncured2021: CoolingLimit = { ...coolingUncured, source: appendixB2021('option 1') };

/**
 * Begun within 90 min of cooking; chilling then goes on to 40 °F (4.4 °C) before shipping, which is a limit of its own.
 * Longer than 1 h between 120 and 80 °F makes compliance less certain: plan `coolingFromCookingStrict` then.
 */
export const coolingFromCooking: CoolingLimit = {
  kind: 'cooling',
  stages: [{ from: both(120, 48.9), to: both(55, 12.8), withinSeconds: 6 * HOUR, counted: 'stage' }],
  startWithinSeconds: 1.5 * HOUR,
  longestGapSeconds: LONGEST_GAP_SECONDS.cooling,
  source: appendixB1999('option 2', true),
};

/** With the hour between 120 and 80 °F as a limit. */
export const coolingFromCookingStrict: CoolingLimit = {
  kind: 'cooling',
  stages: [
    { from: both(120, 48.9), to: both(80, 26.7), withinSeconds: HOUR, counted: 'stage' },
    { from: both(80, 26.7), to: both(55, 12.8), withinSeconds: 5 * HOUR, counted: 'stage' },
  ],
  startWithinSeconds: 1.5 * HOUR,
  longestGapSeconds: LONGEST_GAP_SECONDS.cooling,
  source: appendixB2021('option 2'),
};

/**
 * Cured product with at least 100 ppm ingoing sodium nitrite: 15 h in all. The 2021 form is remembered to ask for at
 * least 250 ppm erythorbate or ascorbate as well. Known only through the Canadian Food Inspection Agency's page on
 * cooling heat-processed meat products, which quotes the guideline; hence unconfirmed.
 */
export const coolingCured: CoolingLimit = {
  kind: 'cooling',
  stages: [
    { from: both(130, 54.4), to: both(80, 26.7), withinSeconds: 5 * HOUR, counted: 'stage' },
    { from: both(80, 26.7), to: both(45, 7.2), withinSeconds: 10 * HOUR, counted: 'stage' },
  ],
  longestGapSeconds: LONGEST_GAP_SECONDS.slowCooling,
  source: {
    ...appendixB1999('option 3, as quoted by the Canadian Food Inspection Agency', false),
    url: 'https://inspection.canada.ca/preventive-controls/meat/cooling-heat-processed/eng/1522948253869/1522948254134',
  },
};
