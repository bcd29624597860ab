import { addToCooling, beginCooling, copyOfCooling, type CoolingSoFar } from '../thermal/cooling-so-far';
import type { Instant } from '../thermal/instant';
import type { CurveContext } from './curve-context';
import {
  addToBandTimeSoFar,
  beginBandTime,
  copyOfBandTime,
  judgeBandTimeSoFar,
  type BandTimeSoFar,
} from './judge-band-time';
import { judgeCoolingSoFar } from './judge-cooling';
import { addToDwell, beginDwell, copyOfDwell, judgeDwellSoFar, type DwellSoFar } from './judge-dwell';
import type { CurveLimit } from './limit';
import type { Verdict } from './verdict';

/** One probe against one limit, up to the last reading added: the same three steps whatever the kind of limit. */
export type OneLimitSoFar = {
  add: (instant: Instant) => void;
  judge: (curveNotes: readonly string[], context: CurveContext) => Verdict;
  /** A second one that goes on by itself. */
  copy: () => OneLimitSoFar;
};

/** @param error what the thermometer may be wrong by, on the common scale */
export function beginLimit(limit: CurveLimit, startAt: number | undefined, error: number): OneLimitSoFar {
  switch (limit.kind) {
    case 'dwell':
      return dwelling(beginDwell(limit, error));
    case 'cooling':
      return chilling(beginCooling(limit, { startAt, error }));
    case 'bandTime':
      return comingUp(beginBandTime(limit, error));
  }
}

const dwelling = (dwell: DwellSoFar): OneLimitSoFar => ({
  add: (instant) => addToDwell(dwell, instant),
  judge: (notes, context) => judgeDwellSoFar(dwell, notes, context),
  copy: () => dwelling(copyOfDwell(dwell)),
});

const chilling = (cooling: CoolingSoFar): OneLimitSoFar => ({
  add: (instant) => addToCooling(cooling, instant),
  judge: (notes, context) => judgeCoolingSoFar(cooling, notes, context),
  copy: () => chilling(copyOfCooling(cooling)),
});

const comingUp = (come: BandTimeSoFar): OneLimitSoFar => ({
  add: (instant) => addToBandTimeSoFar(come, instant),
  judge: (notes, context) => judgeBandTimeSoFar(come, notes, context),
  copy: () => comingUp(copyOfBandTime(come)),
});
