import type { Ratio } from '../formula/curing-species';
import type { Worked } from '../formula/fault';
import { above, boundOf, sayPrinted } from '../quantity/bound';
import type { PrintedTemperature } from '../quantity/temperature';
import { prepareCurve, type CurveReading } from '../thermal/curve';

const MINUTE = 60_000n;

/**
 * Minutes from the end of cooking to the reading from which the core stays at or below a bound, as a figure to judge:
 * for rules whose clock starts when cooking ends. The moment of that reading is taken, never an earlier one between
 * two, so it is the longest the readings allow. A fault while it has not been reached, or was below before cooking
 * ended.
 * @param endOfCooking epoch milliseconds
 */
export function timeToReach(
  readings: readonly CurveReading[],
  endOfCooking: number,
  to: PrintedTemperature,
): Worked<Ratio> {
  const bound = boundOf(to);
  const curve = prepareCurve(readings).warmer;
  const lastAbove = curve.findLastIndex(({ temperature }) => above(temperature, bound) > 0);
  const reached = curve[lastAbove + 1];
  const said = sayPrinted(to, to['°C'] === undefined ? '°F' : '°C');
  if (!Number.isSafeInteger(endOfCooking)) return { fault: 'The time cooking ended is not recorded.' };
  if (!reached) return { fault: `No reading shows that the core stays at or below ${said}.` };
  if (reached.at < endOfCooking || lastAbove < 0)
    return { fault: `The core was never above ${said} after cooking ended.` };
  return { numerator: BigInt(reached.at - endOfCooking), denominator: MINUTE };
}
