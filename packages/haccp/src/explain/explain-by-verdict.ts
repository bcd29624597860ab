import { coded } from '../limits/coded';
import type { ExplainedStep, WorkedOut } from './explanation';

/** What the verdict itself says of the limit, as a step. */
export const againstLimit: ExplainedStep = {
  what: coded('against-limit'),
  rule: { verdict: 'limit' },
  putIn: { verdict: 'measured' },
  gives: { verdict: 'margin and because' },
};

/** The same where the margin stands beside it. */
export const judgedStep: ExplainedStep = { ...againstLimit, gives: { verdict: 'because' } };

/** What the verdict itself says, for a kind of limit that has no working of its own. */
export const explainByVerdict: WorkedOut = {
  steps: [judgedStep],
  restsOn: [],
  assumptions: [],
};
