import { once } from '../limits/once';
import { isRescue } from '../kinds/cooling/noted-rescue';
import type { Recorded } from '../kinds/explainer';
import { explainerOf } from '../kinds/explainers';
import type { CriticalLimit } from '../limits/limit';
import type { Coded, Verdict } from '../limits/verdict';
import type { Explanation } from './explanation';

/** Told already by the steps of the stage. */
const isTold = ({ code }: Coded): boolean => code.startsWith('cooling-straight');

export function explainLimit(limit: CriticalLimit, verdict: Verdict, recorded: Recorded): Explanation {
  const { explain, cautions } = explainerOf(limit);
  const { steps, restsOn, assumptions } = explain(limit, verdict, recorded);
  const others = verdict.notes.filter((note) => !isRescue(note) && !isTold(note));
  return {
    verdict,
    steps,
    restsOn,
    assumptions: once([...assumptions, ...others]),
    rescue: verdict.notes.filter(isRescue),
    sources: [limit.source],
    cautions: [...cautions],
  };
}
