import { coded } from '../limits/coded';
import type { ExplainedStep, WorkedOut } from './explanation';

export const againstLimit: ExplainedStep = {
  what: coded('against-limit'),
  rule: { verdict: 'limit' },
  putIn: { verdict: 'measured' },
  gives: { verdict: 'margin and because' },
};

/** Without the margin, which stands beside the verdict. */
export const judgedStep: ExplainedStep = { ...againstLimit, gives: { verdict: 'because' } };

export const explainByVerdict: WorkedOut = {
  steps: [judgedStep],
  restsOn: [],
  assumptions: [],
};
