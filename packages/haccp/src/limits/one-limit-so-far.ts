import { curveJudgeOf, type OneLimitSoFar } from '../kinds/curve-judges';
import type { Instant } from '../thermal/instant';
import { errorOf, type CurveContext, type KnownBefore } from './curve-context';
import type { CurveLimit } from './limit';
import type { Remark, Verdict } from './verdict';

export type { OneLimitSoFar };

export function beginLimit(limit: CurveLimit, known: KnownBefore): OneLimitSoFar {
  const error = errorOf(known) ?? Infinity;
  return { kind: limit.kind, soFar: curveJudgeOf(limit).begin(limit, { error, startAt: known.startAt }) };
}

export const addToLimit = (one: OneLimitSoFar, instant: Instant): void => curveJudgeOf(one).add(one.soFar, instant);

export const judgeLimit = (one: OneLimitSoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict =>
  curveJudgeOf(one).judge(one.soFar, curveNotes, context);

export const copyOfLimit = (one: OneLimitSoFar): OneLimitSoFar => ({ kind: one.kind, soFar: curveJudgeOf(one).copy(one.soFar) });
