import type { LinePart } from '../limits/line-part';
import { plainPart } from '../limits/plain-part.test-data';
import type { Verdict } from '../limits/verdict';
import type { Calculation } from './calculation';
import type { CannotCalculate } from './cannot';

type Plain<Line> = { [Name in keyof Line]: Line[Name] extends LinePart | undefined ? string : Line[Name] };

export type PlainCalculation = {
  given: Plain<Calculation['given'][number]>[];
  steps: Plain<Calculation['steps'][number]>[];
  results: { what: string; is: string; value?: number; unit?: string }[];
  verdicts: Verdict[];
  notes: string[];
  cannot?: string;
};

export function plainly(outcome: Calculation | CannotCalculate): PlainCalculation {
  if ('cannot' in outcome) {
    return { given: [], steps: [], results: [], verdicts: [], notes: [], cannot: outcome.cannot.map(plainPart).join('; ') };
  }
  const { given, steps, results, judged, notes } = outcome;
  return {
    given: given.map(({ what, is }) => ({ what: plainPart(what), is: plainPart(is) })),
    steps: steps.map(({ what, rule, putIn, gives }) => ({
      what: plainPart(what),
      rule: plainPart(rule),
      putIn: plainPart(putIn),
      gives: plainPart(gives),
    })),
    results: results.map(({ what, is, ...figure }) => ({ what: plainPart(what), is: plainPart(is), ...figure })),
    verdicts: judged.map(({ verdict }) => verdict),
    notes: notes.map(plainPart),
  };
}

export function resultsBy(outcome: Calculation | CannotCalculate): Record<string, string> {
  const { results, cannot } = plainly(outcome);
  return cannot === undefined ? Object.fromEntries(results.map(({ what, is }) => [what, is])) : { cannot };
}

export const kindsOf = (outcome: Calculation | CannotCalculate) => plainly(outcome).verdicts.map(({ kind }) => kind);
