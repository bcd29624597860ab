import type { Step } from '../calculators/calculation';
import type { LinePart } from '../limits/line-part';
import type { Source } from '../limits/source';
import type { Coded, Verdict } from '../limits/verdict';

/** One step; `of` is the verdict that it is told with, where that is not the one explained. */
export type ExplainedStep = Step & { of?: Verdict };

/**
 * A record a verdict rests on, what was recorded, and what it is to the verdict: the last at or above 130 °F. `of` is
 * the verdict on that record alone. `at` in epoch ms.
 */
export type RestingOn = { id?: string; at?: number; probe?: string; is: LinePart; role: LinePart; of?: Verdict };

/** How one limit was judged, as codes and figures. The verdict is the judge's own; nothing here changes it. */
export type Explanation = {
  verdict: Verdict;
  /** Each rule, the same with the figures put in, and what comes of it. */
  steps: ExplainedStep[];
  restsOn: RestingOn[];
  /** What was taken where the readings are thin, and what stands beside the verdict for information. */
  assumptions: Coded[];
  /** What would still bring a running stage to its bound, or that nothing would. */
  rescue: Coded[];
  sources: Source[];
  cautions: Coded[];
};

/** What one kind of limit adds to its verdict. */
export type WorkedOut = Pick<Explanation, 'steps' | 'restsOn' | 'assumptions'>;
