import type { LimitSet } from './limit-set';
import { limitSetById, usualSetOf } from './sets';
import { placesIn, type WhereItWorks } from './where-it-works';

/** The published set an establishment works by; undefined when it has not said where, or names one not known here. */
export function setInUse({ jurisdiction, limitSet }: WhereItWorks): LimitSet | undefined {
  return jurisdiction && limitSetById(limitSet ?? usualSetOf[jurisdiction]);
}

export type FaultOfWhere = { field: 'place' | 'limitSet'; because: string };

/** What keeps a place or an edition from being of its jurisdiction; empty when they are. */
export function faultsOfWhere({ jurisdiction, place, limitSet }: WhereItWorks): FaultOfWhere[] {
  const faults: FaultOfWhere[] = [];
  if (place !== undefined && !(jurisdiction && placesIn[jurisdiction].includes(place)))
    faults.push({ field: 'place', because: `“${place}” is no place that ${named(jurisdiction)} tells apart.` });
  if (limitSet !== undefined && !(jurisdiction && limitSetById(limitSet)?.jurisdiction === jurisdiction))
    faults.push({ field: 'limitSet', because: `“${limitSet}” is no edition of ${named(jurisdiction)}.` });
  return faults;
}

const named = (jurisdiction: string | undefined): string => jurisdiction ?? 'a jurisdiction that is not said';
