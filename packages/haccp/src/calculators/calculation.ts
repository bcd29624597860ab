import type { Source } from '../limits/source';
import type { Told } from '../limits/told';

/** One figure in words: "Meat block", "7.3 kg". */
export type Fact = { what: string; said: string };

/** One step: the rule in words, the same with the numbers put in, and what comes of it. */
export type Step = { what: string; rule: string; putIn: string; gives: string };

/** A result in words and, where it is a number, as a number in its unit. */
export type Result = Fact & { value?: number; unit?: string };

/**
 * A calculation shown with its working. It is worked out from what was typed and is never a record: nothing is cleared,
 * held or kept by it.
 */
export type Calculation = {
  title: string;
  given: Fact[];
  steps: Step[];
  results: Result[];
  verdicts: Told[];
  /** What was assumed, what was noticed in the figures given, and what the result does not say. */
  notes: string[];
  sources: Source[];
  cautions: string[];
};

/** What cannot be worked out, and why, with the figures and what to do. */
export type CannotCalculate = { cannot: string };

/** A rule of thumb that is used without a published source behind it. */
export const commonPractice = (citation: string): Source => ({
  citation: `${citation}: common practice, no source`,
  edition: '',
  confirmed: false,
});

/** Arithmetic that needs no authority. */
export const arithmetic: Source = { citation: 'Arithmetic', edition: '', confirmed: true };
