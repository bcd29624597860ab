import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { LethalityLimit } from './lethality-limit';
import { nameOfSet } from '../../lethality/name-of-set';
import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import { above, boundOf, raised } from '../../quantity/bound';
import { asGiven, printedIn, timeOf } from '../../quantity/quantities';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

/** Sure kill: the colder end of each step, zero over a gap; by the set named. */
export function explainLethalityLimit(limit: LethalityLimit, own: readonly CurveReading[], context: CurveContext): WorkedOut {
  const { colder } = prepareCurve(own);
  const floor = raised(boundOf(limit.floor), errorOf(context) ?? Infinity);
  const hot = colder.filter(({ temperature }) => above(temperature, floor) >= 0);
  const [first, last] = [hot[0], hot.at(-1)];
  if (!first || !last) return explainByVerdict;
  const { minutesPerLog, referenceCelsius, zCelsius } = limit.set;
  const figure = printedIn(limit.floor, first.temperature.unit);
  const d = asGiven(Number(minutesPerLog.toPrecision(4)), 'min');
  return {
    steps: [
      {
        what: coded('time-for-one-log', { set: nameOfSet(limit.set) }),
        rule: coded('d-of-t.rule'),
        putIn: sum`${d} × 10^((${asGiven(referenceCelsius, '°C')} − T) ÷ ${asGiven(zCelsius, '°C')})`,
        gives: coded('d-from', { figure }),
      },
      {
        what: coded('sure-kill'),
        rule: coded('sure-kill.rule', { gap: timeOf(limit.longestGapSeconds * 1000) }),
        putIn: coded('hot-readings', { count: hot.length, figure, from: { at: first.at }, to: { at: last.at } }),
        gives: { verdict: 'measured' },
      },
      { what: coded('against-target'), rule: { limit }, putIn: { verdict: 'measured' }, gives: { verdict: 'margin and because' } },
    ],
    restsOn: [
      ...resting(first, 'first-at-or-above', { figure }),
      ...(last === first ? [] : resting(last, 'last-held-at-or-above', { figure })),
    ],
    assumptions: [coded('colder-and-no-gap'), coded('supported-by', { authority: limit.authority })],
  };
}
