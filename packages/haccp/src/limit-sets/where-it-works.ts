import type { Jurisdiction } from './limit-set';

export const publishedJurisdictions = [
  'US, inspected establishment',
  'US, retail and catering',
  'Canada',
  'United Kingdom and Ireland',
  'European Union',
  'Australia and New Zealand',
] as const satisfies readonly Jurisdiction[];
export type PublishedJurisdiction = (typeof publishedJurisdictions)[number];

/** The last of several stands for all others: nobody elsewhere is shown what is for one alone. */
export const placesIn: Record<PublishedJurisdiction, readonly string[]> = {
  'US, inspected establishment': [],
  'US, retail and catering': [],
  Canada: ['Québec', 'another province or territory'],
  'United Kingdom and Ireland': ['England', 'Wales', 'Scotland', 'Northern Ireland', 'Ireland'],
  'European Union': ['Denmark', 'another member state'],
  'Australia and New Zealand': ['Australia', 'New Zealand'],
};

/**
 * As the establishment says. An absent jurisdiction or place is not assumed; an absent edition is the jurisdiction's
 * usual one.
 */
export type WhereItWorks = { jurisdiction?: PublishedJurisdiction; place?: string; limitSet?: string };
