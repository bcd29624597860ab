import type { CriticalLimit } from '../limits/limit';
import type { Source } from '../limits/source';
import type { LinePart } from '../limits/line-part';
import type { Coded, Verdict } from '../limits/verdict';

/** One figure and what it is a figure of: the meat block, 7.3 kg. */
export type Fact = { what: LinePart; is: LinePart };

/** One step: the rule, the same with the figures put in, and what comes of it. */
export type Step = { what: LinePart; rule: LinePart; putIn: LinePart; gives: LinePart };

/** A result; beside what is shown, the figure itself where that is not rounded for reading. */
export type Result = Fact & { value?: number; unit?: string };

/** A verdict with the limit it is a verdict on. */
export type JudgedBefore = { verdict: Verdict; limit?: CriticalLimit };

/**
 * A calculation step by step, as codes and figures. It is worked out from what was typed and is never a record: nothing
 * is cleared, held or kept by it.
 */
export type Calculation = {
  given: Fact[];
  steps: Step[];
  results: Result[];
  judged: JudgedBefore[];
  /** What was assumed, what was noticed in the figures given, and what the result does not say. */
  notes: Coded[];
  sources: Source[];
  /** What it stands on where no published source is cited: arithmetic, common practice, a certificate. */
  grounds: Coded[];
  cautions: Coded[];
};
