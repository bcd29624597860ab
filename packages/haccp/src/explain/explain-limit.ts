import { isRescue } from '../kinds/cooling/noted-rescue';
import type { Recorded } from '../kinds/explainer';
import { explainerOf } from '../kinds/explainers';
import type { CriticalLimit } from '../limits/limit';
import type { Coded, Verdict } from '../limits/verdict';
import type { Explanation } from './explanation';

/** What the steps of a stage say already. */
const isSaid = ({ code }: Coded): boolean => code.startsWith('cooling-straight');

/** How one limit was judged; notes of the verdict that are said elsewhere are not said twice. */
export function explainLimit(limit: CriticalLimit, verdict: Verdict, recorded: Recorded): Explanation {
  const { explain, cautions } = explainerOf(limit);
  const told = recorded.tell(verdict, limit);
  const { steps, restsOn, assumptions } = explain(limit, told, recorded);
  const notesWhere = (test: (note: Coded) => boolean) =>
    told.notes.filter((_, index) => {
      const note = verdict.notes[index];
      return test(typeof note === 'object' ? note : { code: '' });
    });
  return {
    verdict,
    steps,
    restsOn,
    assumptions: [...new Set([...assumptions, ...notesWhere((note) => !isRescue(note) && !isSaid(note))])],
    rescue: notesWhere(isRescue),
    sources: [told.source],
    cautions: [...cautions],
  };
}
