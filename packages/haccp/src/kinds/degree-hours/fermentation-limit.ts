import type { Source } from '../../limits/source';
import type { Plain } from '../../limits/measurement';
import type { Degrees } from '../../quantity/temperature';

/**
 * Met when pH is down before too many degree-hours: Σ (chamber − base) × hours above the base. The hotter the chamber
 * ever was, the fewer are allowed.
 */
export type FermentationLimit = {
  /** Figures of one plan have one unit: 60 °F and 15.6 °C are not the same base. */
  base: Degrees;
  pH: Plain;
  /** From the coolest up; the last has no top. */
  classes: FermentationClass[];
  longestGapSeconds: number;
  source: Source;
};

export type DegreeHoursLimit = FermentationLimit & { kind: 'degreeHours' };

/** `most` whole degree-hours while the chamber never was hotter than `top`. */
export type FermentationClass = { top?: Degrees; isTopIncluded: boolean; most: number };

const at = (degrees: number, unit: Degrees['unit']): Degrees => ({ hundredths: degrees * 100, unit });
/** Seconds without a reading of the chamber. Common practice, no source. */
const LONGEST_GAP = 2 * 3600;

export const degreeHoursFahrenheit: FermentationLimit = {
  base: at(60, '°F'),
  pH: { thousandths: 5300 },
  classes: [
    { top: at(90, '°F'), isTopIncluded: false, most: 1200 },
    { top: at(100, '°F'), isTopIncluded: true, most: 1000 },
    { isTopIncluded: true, most: 900 },
  ],
  longestGapSeconds: LONGEST_GAP,
  source: {
    citation:
      'FSIS, Principles of Preservation of Shelf-Stable Dried Meat Products, p. 164; the concept is accepted in ' +
      'FSIS-GD-2021-14, p. 23',
    edition: '11 May 2005',
    confirmed: true,
  },
};

/** Divided by 1.8 and rounded down, as the Canadian agency is quoted. */
export const degreeHoursCelsius: FermentationLimit = {
  base: at(15.6, '°C'),
  pH: { thousandths: 5300 },
  classes: [
    { top: at(33, '°C'), isTopIncluded: false, most: 665 },
    { top: at(37, '°C'), isTopIncluded: true, most: 555 },
    { isTopIncluded: true, most: 500 },
  ],
  longestGapSeconds: LONGEST_GAP,
  source: {
    citation: 'CFIA, Preventive control recommendations for manufacturing fermented and dried meat products',
    edition: 'as quoted on 2 August 2026',
    confirmed: false,
  },
};
