import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { GrowthLimit } from './growth-limit';
import { lawOfGrowth } from '../../calculators/growth-while-cooling';
import { growthSetsFor } from '../../growth/growth-set';
import { coded, wordFor } from '../../limits/coded';
import { decimalText } from '../../quantity/decimal';
import { beginBeforeTheEnd, beginsAnew } from '../../thermal/before-the-end';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { instantOf } from '../../thermal/time-in-band';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

/** The highest set counts, told in classes. */
export function explainGrowthLimit(limit: GrowthLimit, own: readonly CurveReading[], context: CurveContext): WorkedOut {
  const cooling = readingsOfChill(own, context);
  const [first, last] = [cooling[0], cooling.at(-1)];
  if (!first || !last) return explainByVerdict;
  return {
    steps: [
      ...growthSetsFor(limit.species).map((set) => ({
        what: wordFor('growth-set', set.species),
        rule: coded('growth.rule'),
        putIn: lawOfGrowth(set),
        gives: coded('r-at-the-fastest'),
      })),
      {
        what: coded('against-bound'),
        rule: coded('highest-at-most', { most: { value: decimalText(limit.log10, 2), unit: 'log10' } }),
        putIn: { verdict: 'measured' },
        gives: { verdict: 'because' },
      },
    ],
    restsOn: [...resting(first, 'first-of-cooling'), ...(last === first ? [] : resting(last, 'last-of-cooling'))],
    assumptions: [coded('fastest-between'), coded('growth-at-option-1'), coded('screen-deviations-first')],
  };
}

function readingsOfChill(own: readonly CurveReading[], context: CurveContext): CurveReading[] {
  const curve = prepareCurve(own);
  const before = beginBeforeTheEnd(context.startAt, errorOf(context) as number); // otherwise nothing was judged
  let begun = 0;
  curve.warmer.forEach((_, index) => {
    if (beginsAnew(before, instantOf(curve, index))) begun = index;
  });
  return curve.warmer.slice(begun);
}
