import { centreSource } from '../kinds/freezing/freezing-table';
import { salmonellaByTheMeatTable } from '../lethality/sets';
import type { FreezingLimit } from '../kinds/freezing/freezing-limit';
import type { GrowthLimit } from '../kinds/growth/growth-limit';
import type { LethalityLimit } from '../kinds/lethality/lethality-limit';
import { both } from './printed';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

/** The performance standard behind every cooling option, for the lot's own curve. */
export const atMostOneLogGrown: GrowthLimit = {
  kind: 'growth',
  species: 'mixed or unknown',
  log10: 100,
  longestGapSeconds: LONGEST_GAP_SECONDS.growth,
  source: {
    citation: '9 CFR 318.17(a)(2), 318.23(c)(1), 381.150(a)(2): no more than 1 log10 of Clostridium perfringens',
    edition: 'as predicted by a model',
    confirmed: false,
  },
};

/**
 * The target of the printed meat table as an integral. Never met until the plan names the authority that supports its
 * process.
 */
export const salmonellaKilled: LethalityLimit = {
  kind: 'lethality',
  set: salmonellaByTheMeatTable,
  log10: 650,
  floor: both(130, 54.4),
  authority: '',
  longestGapSeconds: LONGEST_GAP_SECONDS.hold,
  source: salmonellaByTheMeatTable.source,
};

/** Prescribed until 2018, read in a copy. */
export const frozenByCentre: FreezingLimit = {
  kind: 'freezing',
  read: { what: 'centre' },
  longestGapSeconds: 7200,
  source: centreSource,
};
