import type { Figures, Verdict } from './verdict';

/** What would be met but for a doubt: undetermined, and with no margin, for of what is in doubt nothing is to spare. */
export function inDoubt(verdict: Verdict, finding: string, figures: Figures = {}): Verdict {
  const { finding: was, figures: by, measure, parts, spare: _spare, ...rest } = verdict;
  return { ...rest, kind: 'undetermined', finding, figures, butFor: { finding: was, figures: by, measure, parts } };
}
