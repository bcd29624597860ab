import type { CriticalLimit } from '../limits/limit';
import type { Verdict } from '../limits/verdict';
import { cautions } from '../calculators/cautions';
import type { Explanation, WorkedOut } from './explanation';

/** A verdict with how it came about. Notes of the verdict that are said elsewhere are not said twice. */
export function explanationOf(limit: CriticalLimit, verdict: Verdict, worked: WorkedOut): Explanation {
  const { steps, restsOn, assumptions, rescue = [], said = [] } = worked;
  const notes = verdict.notes.filter((note) => !rescue.includes(note) && !said.includes(note));
  return {
    verdict,
    steps,
    restsOn,
    assumptions: [...new Set([...assumptions, ...notes])],
    rescue,
    sources: [verdict.source],
    cautions: limit.kind === 'concentration' ? [cautions.curing, cautions.limits] : [cautions.limits],
  };
}
