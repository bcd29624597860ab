import type { CriticalLimit, CurveLimit } from '../limits/limit';
import { bandTimeJudge } from './band-time/band-time-judge';
import { coolingJudge } from './cooling/cooling-judge';
import { dwellJudge } from './dwell/dwell-judge';
import { growthJudge } from './growth/growth-judge';
import type { CurveJudge } from './judge';
import type { LimitOf } from './kind';
import { lethalityJudge } from './lethality/lethality-judge';

type CurveKind = CurveLimit['kind'];

const judges = {
  dwell: dwellJudge,
  cooling: coolingJudge,
  bandTime: bandTimeJudge,
  lethality: lethalityJudge,
  growth: growthJudge,
} satisfies { [K in CurveKind]: CurveJudge<LimitOf<K>, unknown> };

type SoFar = { [K in CurveKind]: ReturnType<(typeof judges)[K]['begin']> }[CurveKind];

export const curveJudgeOf = ({ kind }: { kind: CurveKind }): CurveJudge<CurveLimit, SoFar> =>
  judges[kind] as unknown as CurveJudge<CurveLimit, SoFar>;

export const isCurveLimit = (limit: CriticalLimit): limit is CurveLimit => limit.kind in judges;

export type OneLimitSoFar = { kind: CurveKind; soFar: SoFar };
