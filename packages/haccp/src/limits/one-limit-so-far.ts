import { addToGrowthLimit, beginGrowthLimit, copyOfGrowth, type GrowthSoFar } from '../kinds/growth/growth-so-far';
import { addToLethalityLimit, beginLethalityLimit, copyOfLethality, type LethalitySoFar } from '../kinds/lethality/lethality-so-far';
import { addToCooling, beginCooling, copyOfCooling, type CoolingSoFar } from '../kinds/cooling/cooling-so-far';
import type { Instant } from '../thermal/instant';
import { errorOf, type CurveContext, type KnownBefore } from './curve-context';
import {
  addToBandTimeSoFar,
  beginBandTime,
  copyOfBandTime,
  judgeBandTimeSoFar,
  type BandTimeSoFar,
} from '../kinds/band-time/judge-band-time';
import { judgeCoolingSoFar } from '../kinds/cooling/judge-cooling';
import { addToDwell, beginDwell, copyOfDwell, judgeDwellSoFar, type DwellSoFar } from '../kinds/dwell/judge-dwell';
import { judgeGrowthSoFar } from '../kinds/growth/judge-growth';
import { judgeLethalitySoFar } from '../kinds/lethality/judge-lethality';
import type { CurveLimit } from './limit';
import type { Verdict } from './verdict';

/** One probe against one limit, up to the last reading added: the same four steps whatever the kind of limit. */
export type OneLimitSoFar =
  | { kind: 'dwell'; soFar: DwellSoFar }
  | { kind: 'cooling'; soFar: CoolingSoFar }
  | { kind: 'bandTime'; soFar: BandTimeSoFar }
  | { kind: 'lethality'; soFar: LethalitySoFar }
  | { kind: 'growth'; soFar: GrowthSoFar };

export function beginLimit(limit: CurveLimit, known: KnownBefore): OneLimitSoFar {
  const error = errorOf(known) ?? Infinity;
  switch (limit.kind) {
    case 'dwell':
      return { kind: 'dwell', soFar: beginDwell(limit, error) };
    case 'cooling':
      return { kind: 'cooling', soFar: beginCooling(limit, { startAt: known.startAt, error }) };
    case 'bandTime':
      return { kind: 'bandTime', soFar: beginBandTime(limit, error) };
    case 'lethality':
      return { kind: 'lethality', soFar: beginLethalityLimit(limit, error) };
    case 'growth':
      return { kind: 'growth', soFar: beginGrowthLimit(limit, error, known.startAt) };
  }
}

export function addToLimit(one: OneLimitSoFar, instant: Instant): void {
  switch (one.kind) {
    case 'dwell':
      return addToDwell(one.soFar, instant);
    case 'cooling':
      return addToCooling(one.soFar, instant);
    case 'bandTime':
      return addToBandTimeSoFar(one.soFar, instant);
    case 'lethality':
      return addToLethalityLimit(one.soFar, instant);
    case 'growth':
      return addToGrowthLimit(one.soFar, instant);
  }
}

export function judgeLimit(one: OneLimitSoFar, curveNotes: readonly string[], context: CurveContext): Verdict {
  switch (one.kind) {
    case 'dwell':
      return judgeDwellSoFar(one.soFar, curveNotes, context);
    case 'cooling':
      return judgeCoolingSoFar(one.soFar, curveNotes, context);
    case 'bandTime':
      return judgeBandTimeSoFar(one.soFar, curveNotes, context);
    case 'lethality':
      return judgeLethalitySoFar(one.soFar, curveNotes, context);
    case 'growth':
      return judgeGrowthSoFar(one.soFar, curveNotes, context);
  }
}

/** A second one that goes on by itself. */
export function copyOfLimit(one: OneLimitSoFar): OneLimitSoFar {
  switch (one.kind) {
    case 'dwell':
      return { kind: 'dwell', soFar: copyOfDwell(one.soFar) };
    case 'cooling':
      return { kind: 'cooling', soFar: copyOfCooling(one.soFar) };
    case 'bandTime':
      return { kind: 'bandTime', soFar: copyOfBandTime(one.soFar) };
    case 'lethality':
      return { kind: 'lethality', soFar: copyOfLethality(one.soFar) };
    case 'growth':
      return { kind: 'growth', soFar: copyOfGrowth(one.soFar) };
  }
}
