import type { CriticalLimit } from '../limits/limit';
import type { Source } from '../limits/source';
import type { LinePart } from '../limits/line-part';
import type { Coded, Verdict } from '../limits/verdict';

export type Fact = { what: LinePart; is: LinePart };

/** The rule, the rule with figures, and the result. */
export type Step = { what: LinePart; rule: LinePart; putIn: LinePart; gives: LinePart };

/** `value` where the figure itself is not rounded for reading. */
export type Result = Fact & { value?: number; unit?: string };

export type JudgedBefore = { verdict: Verdict; limit?: CriticalLimit };

/** Never a record: nothing is cleared, held or kept by it. */
export type Calculation = {
  given: Fact[];
  steps: Step[];
  results: Result[];
  judged: JudgedBefore[];
  /** Assumptions, oddities of the figures, and what the result does not say. */
  notes: Coded[];
  sources: Source[];
  /** Where no published source is cited: arithmetic, common practice, a certificate. */
  grounds: Coded[];
  cautions: Coded[];
};
