import type { Step } from '../calculators/calculation';
import type { LinePart } from '../limits/line-part';
import type { Source } from '../limits/source';
import type { Coded, Verdict } from '../limits/verdict';

/** `of` is the verdict told with the step, if not the one explained. */
export type ExplainedStep = Step & { of?: Verdict };

/** `role` in the verdict; `of`, the verdict on this record alone; `at` in epoch ms. */
export type RestingOn = { id?: string; at?: number; probe?: string; is: LinePart; role: LinePart; of?: Verdict };

/** The verdict is the judge's own; nothing here changes it. */
export type Explanation = {
  verdict: Verdict;
  steps: ExplainedStep[];
  restsOn: RestingOn[];
  /** Assumptions for thin readings, and notes beside the verdict. */
  assumptions: Coded[];
  rescue: Coded[];
  sources: Source[];
  cautions: Coded[];
};

export type WorkedOut = Pick<Explanation, 'steps' | 'restsOn' | 'assumptions'>;
