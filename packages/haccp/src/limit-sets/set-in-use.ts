import type { LimitSet } from './limit-set';
import { limitSetById, usualSetOf } from './sets';
import { placesIn, type WhereItWorks } from './where-it-works';

/** Undefined when the establishment has not said where it works, or names an unknown set. */
export function setInUse({ jurisdiction, limitSet }: WhereItWorks): LimitSet | undefined {
  return jurisdiction && limitSetById(limitSet ?? usualSetOf[jurisdiction]);
}

export type FaultOfWhere = { field: 'place' | 'limitSet'; said: string };

export function faultsOfWhere({ jurisdiction, place, limitSet }: WhereItWorks): FaultOfWhere[] {
  const faults: FaultOfWhere[] = [];
  if (place !== undefined && !(jurisdiction && placesIn[jurisdiction].includes(place))) faults.push({ field: 'place', said: place });
  if (limitSet !== undefined && !(jurisdiction && limitSetById(limitSet)?.jurisdiction === jurisdiction))
    faults.push({ field: 'limitSet', said: limitSet });
  return faults;
}
