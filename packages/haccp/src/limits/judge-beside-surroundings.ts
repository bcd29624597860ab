import { onCommonScale } from '../quantity/convert-degrees';
import { coldestAround, isChill } from '../slips/coldest-around';
import { isUsableReading, type CurveReading } from '../thermal/curve';
import { errorOf, type CurveContext } from './curve-context';
import { inDoubt } from './in-doubt';
import { judgeCurveByAll } from './judge-curve';
import type { CurveLimit } from './limit';
import type { Coded, Verdict } from './verdict';

/**
 * A chilled core is never colder than its medium: such a reading counts against the lot and never for it; a stage that
 * only it ended goes on.
 */
export function judgeBesideSurroundings(
  readings: readonly CurveReading[],
  limits: readonly CurveLimit[],
  context: CurveContext,
): Verdict[] {
  const verdicts = judgeCurveByAll(readings, limits, context);
  const coldest = isChill(limits) ? coldestAround(context.surroundings, errorOf(context) ?? 0) : undefined;
  if (coldest === undefined) return verdicts;
  const isColder = (one: CurveReading) => isUsableReading(one) && onCommonScale(one.temperature) < coldest;
  const colder = readings.filter(isColder).length;
  if (colder === 0) return verdicts;
  const without = judgeCurveByAll(
    readings.filter((one) => !isColder(one)),
    limits,
    context,
  );
  const note: Coded = { code: 'doubt-colder-than-around', figures: { count: colder } };
  return verdicts.map((verdict, index) => {
    const doubted = doubting(verdict, without[index] as Verdict);
    return { ...doubted, notes: [...doubted.notes, note] };
  });
}

function doubting(verdict: Verdict, without: Verdict): Verdict {
  if (verdict.kind !== 'missed' && without.kind === 'undetermined') return { ...without, then: READ_AGAIN };
  if (verdict.kind !== 'met' || without.kind === 'met') return verdict;
  return inDoubt(verdict, 'only-with-colder');
}

const READ_AGAIN: Coded = { code: 'read-core-and-around' };
