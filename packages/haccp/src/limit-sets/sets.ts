import { southernSets } from './australia-new-zealand/sets';
import { canadianSets } from './canada/sets';
import { europeanSets } from './european-union/sets';
import type { Jurisdiction, LimitRow, LimitSet } from './limit-set';
import { kingdomSets } from './united-kingdom/sets';
import { usInspectedSets } from './us-inspected/sets';
import { usRetailSets } from './us-retail/sets';

/** Every published set, older editions included: what a plan was built on stays readable. */
export const limitSets: readonly LimitSet[] = [
  ...usInspectedSets,
  ...usRetailSets,
  ...canadianSets,
  ...kingdomSets,
  ...europeanSets,
  ...southernSets,
];

export const limitSetById = (id: string): LimitSet | undefined => limitSets.find((set) => set.id === id);

export const limitSetsOf = (jurisdiction: Jurisdiction): LimitSet[] =>
  limitSets.filter((set) => set.jurisdiction === jurisdiction);

/**
 * The set in which to look by default. For retail, Food Code 2022: the adopted edition is the establishment's to say,
 * and of the one of 2026 only two figures are known.
 */
export const usualSetOf: Record<Exclude<Jurisdiction, 'own'>, string> = {
  'US, inspected establishment': 'us-inspected-2021',
  'US, retail and catering': 'us-retail-2022',
  Canada: 'canada-2026',
  'United Kingdom and Ireland': 'united-kingdom-2026',
  'European Union': 'european-union-2025',
  'Australia and New Zealand': 'australia-new-zealand-2026',
};

/** The rows to offer first: confirmed, and marked so by their set. */
export const defaultsOf = ({ rows }: LimitSet): LimitRow[] =>
  rows.filter(({ isDefault, limit }) => isDefault === true && limit.source.confirmed);
