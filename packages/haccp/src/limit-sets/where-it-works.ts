import type { Jurisdiction } from './limit-set';

/** The jurisdictions whose figures are published here. */
export const publishedJurisdictions = [
  'US, inspected establishment',
  'US, retail and catering',
  'Canada',
  'United Kingdom and Ireland',
  'European Union',
  'Australia and New Zealand',
] as const satisfies readonly Jurisdiction[];
export type PublishedJurisdiction = (typeof publishedJurisdictions)[number];

/**
 * The nations or provinces that a set tells apart. The last of some stands for all the others, so that whoever has said
 * to be elsewhere is not shown what is for one of them alone.
 */
export const placesIn: Record<PublishedJurisdiction, readonly string[]> = {
  'US, inspected establishment': [],
  'US, retail and catering': [],
  Canada: ['Québec', 'another province or territory'],
  'United Kingdom and Ireland': ['England', 'Wales', 'Scotland', 'Northern Ireland', 'Ireland'],
  'European Union': ['Denmark', 'another member state'],
  'Australia and New Zealand': ['Australia', 'New Zealand'],
};

/**
 * Where an establishment works and by which edition, as it says itself. What is absent was not said: nothing is assumed
 * of the jurisdiction or the place; without an edition the usual one of the jurisdiction is used.
 */
export type WhereItWorks = { jurisdiction?: PublishedJurisdiction; place?: string; limitSet?: string };
