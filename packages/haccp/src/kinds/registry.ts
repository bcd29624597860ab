import type { CriticalLimit } from '../limits/limit';
import { attestation } from './attestation/attestation';
import { bandTime } from './band-time/band-time';
import { concentration } from './concentration/concentration';
import { cooling } from './cooling/cooling';
import { degreeHours } from './degree-hours/degree-hours';
import { dwell } from './dwell/dwell';
import { figure } from './figure/figure';
import { freezing } from './freezing/freezing';
import { growth } from './growth/growth';
import type { Kind, LimitKind, LimitOf, TakenAs } from './kind';
import { lethality } from './lethality/lethality';
import { range } from './range/range';
import { weightLoss } from './weight-loss/weight-loss';

const kinds = {
  range,
  figure,
  concentration,
  dwell,
  cooling,
  bandTime,
  lethality,
  growth,
  degreeHours,
  weightLoss,
  freezing,
  attestation,
} satisfies { [K in LimitKind]: Kind<LimitOf<K>> };

export const kindOf = <Limit extends CriticalLimit>({ kind }: Limit): Kind<Limit> => kinds[kind] as unknown as Kind<Limit>;

/** In the order in which they are offered. */
export const kindsTakenAs = (takenAs: TakenAs): LimitKind[] =>
  (Object.keys(kinds) as LimitKind[]).filter((kind) => kinds[kind].takenAs === takenAs);
