import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { GrowthLimit } from './growth-limit';
import type { Told } from '../../limits/told';
import { GROWTH_AT_OPTION_1, SCREEN_DEVIATIONS_FIRST } from '../../growth/growth-at-option-1';
import { growthSetsFor } from '../../growth/growth-set';
import { decimalText } from '../../quantity/decimal';
import { beginBeforeTheEnd, beginsAnew } from '../../thermal/before-the-end';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { instantOf } from '../../thermal/time-in-band';
import type { GrowthSet } from '../../growth/growth-set';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

const GROWTH_RULE = 'R = sum of b²(T − Tmin)²(1 − e^(c(T − Tmax))) × time; with lag lg((1 + q0·10^R) ÷ (1 + q0))';

/** The figures of a set, as they go into the rule. */
const growthLaw = ({ b, minCelsius, c, maxCelsius, q0 }: GrowthSet): string =>
  `b ${b}, Tmin ${minCelsius} °C, c ${c}, Tmax ${maxCelsius} °C, q0 ${q0}`;

/** Every set that may apply, with its figures; the highest counts, and it is said in classes. */
export function explainGrowthLimit(limit: GrowthLimit, told: Told, own: readonly CurveReading[], context: CurveContext): WorkedOut {
  const cooling = readingsOfChill(own, context);
  const [first, last] = [cooling[0], cooling.at(-1)];
  if (!first || !last) return explainByVerdict(told);
  return {
    steps: [
      ...growthSetsFor(limit.species).map((set) => ({
        what: set.name,
        rule: GROWTH_RULE,
        putIn: growthLaw(set),
        gives: 'R over every step at the fastest rate between its ends',
      })),
      {
        what: 'Against the bound',
        rule: `the highest of them, at most ${decimalText(limit.log10, 2)} log`,
        putIn: told.measured,
        gives: told.because,
      },
    ],
    restsOn: [...resting(first, 'first of the cooling'), ...(last === first ? [] : resting(last, 'last of the cooling'))],
    assumptions: ['Between two readings the fastest rate anywhere between them is taken.', GROWTH_AT_OPTION_1, SCREEN_DEVIATIONS_FIRST],
  };
}

function readingsOfChill(own: readonly CurveReading[], context: CurveContext): CurveReading[] {
  const curve = prepareCurve(own);
  const before = beginBeforeTheEnd(context.startAt, errorOf(context) as number); // else nothing was judged
  let begun = 0;
  curve.warmer.forEach((_, index) => {
    if (beginsAnew(before, instantOf(curve, index))) begun = index;
  });
  return curve.warmer.slice(begun);
}
