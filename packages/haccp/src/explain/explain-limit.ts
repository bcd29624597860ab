import type { Recorded } from '../kinds/explainer';
import { explainerOf } from '../kinds/explainers';
import type { CriticalLimit } from '../limits/limit';
import type { Verdict } from '../limits/verdict';
import type { Explanation } from './explanation';

/** How one limit was judged; notes of the verdict that are said elsewhere are not said twice. */
export function explainLimit(limit: CriticalLimit, verdict: Verdict, recorded: Recorded): Explanation {
  const { explain, cautions } = explainerOf(limit);
  const { steps, restsOn, assumptions, rescue = [], said = [] } = explain(limit, verdict, recorded);
  const notes = verdict.notes.filter((note) => !rescue.includes(note) && !said.includes(note));
  return {
    verdict,
    steps,
    restsOn,
    assumptions: [...new Set([...assumptions, ...notes])],
    rescue,
    sources: [verdict.source],
    cautions: [...cautions],
  };
}
