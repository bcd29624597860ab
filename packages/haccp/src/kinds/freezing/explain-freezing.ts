import { sayFreezing } from './judge-freezing';
import type { FreezingLimit } from './freezing-limit';
import type { Told } from '../../limits/told';
import { sayDuration } from '../../quantity/duration';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { SayTime, WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

/** The longest stretch at or below a printed row, of the probe that was frozen least. */
export function explainFreezing(limit: FreezingLimit, told: Told, own: readonly CurveReading[], say: SayTime): WorkedOut {
  const { warmer } = prepareCurve(own);
  const [first, last] = [warmer[0], warmer.at(-1)];
  if (!first || !last) return explainByVerdict(told);
  const gap = sayDuration(limit.longestGapSeconds * 1000);
  return {
    steps: [
      {
        what: 'Frozen without a break',
        rule: `the longest stretch with both readings of every step at or below the row, no step longer than ${gap}`,
        putIn: `${warmer.length} readings from ${say(first.at)} to ${say(last.at)}`,
        gives: told.measured,
      },
      { what: 'Against the rows', rule: sayFreezing(limit), putIn: told.measured, gives: told.because },
    ],
    restsOn: [...resting(first, 'the first'), ...(last === first ? [] : resting(last, 'the last'))],
    assumptions: ['Nothing is read between the printed rows.'],
  };
}
