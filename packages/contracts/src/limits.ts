import type { CriticalLimit, LimitKind, LimitOf } from '@larderbook/haccp';
import { z } from 'zod';
import { attestation } from './kinds/attestation';
import { bandTime } from './kinds/band-time';
import { concentration } from './kinds/concentration';
import { cooling } from './kinds/cooling';
import { degreeHours } from './kinds/degree-hours';
import { dwell } from './kinds/dwell';
import { figure } from './kinds/figure';
import { freezing } from './kinds/freezing';
import { growth } from './kinds/growth';
import { lethality } from './kinds/lethality';
import { range } from './kinds/range';
import { weightLoss } from './kinds/weight-loss';
import { conditioned } from './limit-conditions';
import { verdict } from './verdicts';

const kinds = {
  range,
  concentration,
  dwell,
  cooling,
  bandTime,
  lethality,
  growth,
  degreeHours,
  weightLoss,
  freezing,
  figure,
  attestation,
} satisfies { [K in LimitKind]: z.ZodType<LimitOf<K>> };

type OneKind = (typeof kinds)[LimitKind];

export const criticalLimit = z
  .discriminatedUnion('kind', Object.values(kinds) as [OneKind, ...OneKind[]])
  .and(conditioned) satisfies z.ZodType<CriticalLimit>;

export const judged = z.object({ limitId: z.string(), limit: criticalLimit, verdict });
export type Judged = z.output<typeof judged>;
