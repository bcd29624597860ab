import { acidReached, type AcidReading } from './acid-reached';
import { lessAcid } from './less-acid';
import { coded } from '../../limits/coded';
import type { CurveContext } from '../../limits/curve-context';
import { joined } from '../../limits/line-part';
import type { Plain } from '../../limits/measurement';
import type { Verdict } from '../../limits/verdict';
import type { DegreeHoursLimit } from './fermentation-limit';
import { decimalText } from '../../quantity/decimal';
import { degreesOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

/** Until the reading from which the pH stays down. */
export function explainDegreeHours(
  limit: DegreeHoursLimit,
  verdict: Verdict,
  own: readonly CurveReading[],
  acid: readonly AcidReading[],
  { startAt, acidError }: CurveContext,
): WorkedOut {
  const { warmer } = prepareCurve(own);
  const [first, last] = [warmer[0], warmer.at(-1)];
  if (!first || !last) return explainByVerdict;
  const { reachedAt } = acidReached(lessAcid(acid, acidError), limit.pH);
  const pH = acidity(limit.pH);
  const base = degreesOf(limit.base);
  const read = acid.map((one) => coded('figure-at', { figure: acidity(one.pH), at: { at: one.at } }));
  return {
    steps: [
      {
        what: coded('from-recorded-start'),
        rule: coded('from-recorded-start.rule'),
        putIn: startAt === undefined ? coded('no-start-recorded') : { at: startAt },
        gives: startAt === undefined ? coded('nothing-is-met') : { at: Math.min(startAt, first.at) },
      },
      {
        what: coded('until-ph-down', { pH }),
        rule: coded('until-ph-down.rule', { pH }),
        putIn: read.length > 0 ? { sum: joined(read, ', ') } : coded('none'),
        gives: reachedAt === undefined ? coded('not-yet') : { at: reachedAt },
      },
      {
        what: coded('degree-hours'),
        rule: coded('degree-hours-over.rule', { base }),
        putIn: coded('readings-from-to', { count: warmer.length, from: { at: first.at }, to: { at: last.at } }),
        gives: { verdict: 'measured' },
      },
      { what: coded('against-class'), rule: { limit }, putIn: { verdict: 'limit' }, gives: { verdict: 'margin and because' } },
    ],
    restsOn: [
      ...resting(first, 'first-of-chamber'),
      ...(last === first ? [] : resting(last, 'last-of-chamber')),
      ...acid.filter(({ at }) => at === reachedAt).map(({ at, pH: shown }) => ({ at, is: acidity(shown), role: coded('shows-ph-down') })),
    ],
    assumptions: [coded('warmer-end-counts'), ...verdict.notes],
  };
}

const acidity = ({ thousandths }: Plain): Quantity => ({ value: decimalText(thousandths, 3), unit: 'pH' });
