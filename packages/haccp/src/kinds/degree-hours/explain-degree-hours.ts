import { acidReached, type AcidReading } from './acid-reached';
import { lessAcid } from './less-acid';
import type { CurveContext } from '../../limits/curve-context';
import { sayDegreeHours } from './say-fermentation';
import type { DegreeHoursLimit } from './fermentation-limit';
import type { Told } from '../../limits/told';
import { decimalText } from '../../quantity/decimal';
import { sayDegrees } from '../../quantity/degrees';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { SayTime, WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

/** The chamber above its base, hour by hour, until the reading from which the pH stays down. */
export function explainDegreeHours(
  limit: DegreeHoursLimit,
  told: Told,
  own: readonly CurveReading[],
  acid: readonly AcidReading[],
  { startAt, acidError }: CurveContext,
  say: SayTime,
): WorkedOut {
  const { warmer } = prepareCurve(own);
  const [first, last] = [warmer[0], warmer.at(-1)];
  if (!first || !last) return explainByVerdict(told);
  const { reachedAt } = acidReached(lessAcid(acid, acidError), limit.pH);
  const pH = decimalText(limit.pH.thousandths, 3);
  const base = sayDegrees(limit.base);
  return {
    steps: [
      {
        what: 'From the recorded start',
        rule: 'the moment fermentation was recorded to begin, or the first reading where that is earlier',
        putIn: startAt === undefined ? 'no start is recorded' : say(startAt),
        gives: startAt === undefined ? 'nothing is met' : say(Math.min(startAt, first.at)),
      },
      {
        what: `Until the pH is down to ${pH}`,
        rule: `the first reading at or below ${pH} after which none is above it`,
        putIn: acid.map(({ at, pH: read }) => `${decimalText(read.thousandths, 3)} at ${say(at)}`).join(', ') || 'none',
        gives: reachedAt === undefined ? 'not yet' : say(reachedAt),
      },
      {
        what: 'Degree-hours',
        rule: `sum of (chamber − ${base}) × hours, while it is above ${base}`,
        putIn: `${warmer.length} readings from ${say(first.at)} to ${say(last.at)}`,
        gives: told.measured,
      },
      {
        what: 'Against the class of the hottest it was',
        rule: sayDegreeHours(limit),
        putIn: told.limit,
        gives: [told.margin, told.because].filter(Boolean).join('. '),
      },
    ],
    restsOn: [
      ...resting(first, 'first of the chamber'),
      ...(last === first ? [] : resting(last, 'last of the chamber')),
      ...acid
        .filter(({ at }) => at === reachedAt)
        .map(({ at, pH: read }) => ({ at, said: `pH ${decimalText(read.thousandths, 3)}`, role: 'shows the pH down' })),
    ],
    assumptions: ['Between two readings the warmer end counts; over a gap longer than tolerated the cooler for missed.', ...told.notes],
  };
}
