import type { Source } from '../limits/source';
import type { Verdict } from '../limits/verdict';

/** One step: the rule in words, the same with the numbers put in, and what comes of it. */
export type WorkedStep = { what: string; rule: string; putIn: string; gives: string };

/** An instant (epoch ms) as the clock of the shop shows it. The domain knows no zone, so whoever asks says it. */
export type SayTime = (at: number) => string;

/** A record a verdict rests on, and what it is to it: "last at or above 130 °F". `at` in epoch ms. */
export type RestingOn = { id?: string; at?: number; probe?: string; said: string; role: string };

/** How one limit was judged. The verdict is the judge's own; nothing here changes it. */
export type Explanation = {
  verdict: Verdict;
  /** Each rule, the same with the numbers put in, and what comes of it. */
  steps: WorkedStep[];
  restsOn: RestingOn[];
  /** What was taken where the readings are thin, and what stands beside the verdict for information. */
  assumptions: string[];
  /** What would still bring a running stage to its bound, or that nothing would. */
  rescue: string[];
  sources: Source[];
  cautions: string[];
};

/** What one kind of limit adds to its verdict. */
export type WorkedOut = Pick<Explanation, 'steps' | 'restsOn' | 'assumptions'>;
