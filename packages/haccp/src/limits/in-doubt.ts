import type { Figures, Verdict } from './verdict';

/** Met but for a doubt becomes undetermined, without a margin: a doubted figure spares nothing. */
export function inDoubt(verdict: Verdict, finding: string, figures: Figures = {}): Verdict {
  const { finding: was, figures: by, measure, parts, spare: _spare, ...rest } = verdict;
  return { ...rest, kind: 'undetermined', finding, figures, butFor: { finding: was, figures: by, measure, parts } };
}
