import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { LethalityLimit } from './lethality-limit';
import { sayTarget } from './say-lethality-limit';
import type { Told } from '../../limits/told';
import { above, boundOf, raised, sayPrinted } from '../../quantity/bound';
import { sayDuration } from '../../quantity/duration';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { SayTime, WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

/** The kill that is sure: over each step the colder end, over a gap nothing; by the law of the set named. */
export function explainLethalityLimit(
  limit: LethalityLimit,
  told: Told,
  own: readonly CurveReading[],
  context: CurveContext,
  say: SayTime,
): WorkedOut {
  const { colder } = prepareCurve(own);
  const floor = raised(boundOf(limit.floor), errorOf(context) ?? Infinity);
  const hot = colder.filter(({ temperature }) => above(temperature, floor) >= 0);
  const [first, last] = [hot[0], hot.at(-1)];
  if (!first || !last) return explainByVerdict(told);
  const { minutesPerLog, referenceCelsius, zCelsius, name } = limit.set;
  const from = sayPrinted(limit.floor, first.temperature.unit);
  const gap = sayDuration(limit.longestGapSeconds * 1000);
  return {
    steps: [
      {
        what: `Time for one log, ${name}`,
        rule: 'D(T) = D × 10^((reference − T) ÷ z)',
        putIn: `${Number(minutesPerLog.toPrecision(4))} min × 10^((${referenceCelsius} °C − T) ÷ ${zCelsius} °C)`,
        gives: `D at every reading from ${from} up`,
      },
      {
        what: 'Kill that is sure',
        rule: `sum of time ÷ D at the colder end of each step, no step longer than ${gap}`,
        putIn: `${hot.length} readings at or above ${from}, ${say(first.at)} to ${say(last.at)}`,
        gives: told.measured,
      },
      {
        what: 'Against the target',
        rule: `more than ${sayTarget(limit)}`,
        putIn: told.measured,
        gives: [told.margin, told.because].filter(Boolean).join('. '),
      },
    ],
    restsOn: [...resting(first, `first at or above ${from}`), ...(last === first ? [] : resting(last, `last at or above ${from}`))],
    assumptions: [
      'Between two readings the colder of the two is taken, and over a gap nothing is counted.',
      `Supported by ${limit.authority}.`,
    ],
  };
}
