import type { Figures, Verdict } from './verdict';

/** What is met but for a doubt becomes undetermined; a doubted figure has no margin. */
export function inDoubt(verdict: Verdict, finding: string, figures: Figures = {}): Verdict {
  const { finding: was, figures: by, measure, parts, spare: _spare, ...rest } = verdict;
  return { ...rest, kind: 'undetermined', finding, figures, butFor: { finding: was, figures: by, measure, parts } };
}
