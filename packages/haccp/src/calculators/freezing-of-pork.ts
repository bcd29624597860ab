import type { FreezingLimit } from '../kinds/freezing/freezing-limit';
import { centreSource, thicknessSource } from '../kinds/freezing/freezing-table';
import { judgeFreezing } from '../kinds/freezing/judge-freezing';
import { coded } from '../limits/coded';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { judgedStep } from '../explain/explain-by-verdict';
import { curveOf, factsOf, type TypedReading } from './typed-reading';
import { asGiven } from '../quantity/quantities';

/** Common practice, no source. */
const LONGEST_GAP_SECONDS = 7200;

/** By the freezer air and the thickness, or by the centre of the meat. */
export function freezingOfPork(
  read: FreezingLimit['read'],
  readings: readonly TypedReading[],
  unit: TemperatureUnit,
): Calculation | CannotCalculate {
  if (readings.length === 0) return cannot('no-reading-given');
  const curve = curveOf(readings, unit);
  const source = read.what === 'centre' ? centreSource : thicknessSource;
  const limit: FreezingLimit = { kind: 'freezing', read, longestGapSeconds: LONGEST_GAP_SECONDS, source };
  // Readings begin when the meat goes in.
  const startAt = Math.min(...curve.map(({ at }) => at));
  return {
    given: [
      {
        what: coded('read-in'),
        is: read.what === 'centre' ? coded('in-the-centre') : coded('in-the-freezer', { thickness: typedThickness(read.thickness) }),
      },
      ...factsOf(readings, unit),
    ],
    steps: [{ ...judgedStep, what: coded('against-table') }],
    results: [{ what: coded('measured'), is: { verdict: 'measured' } }],
    judged: [{ verdict: judgeFreezing({ read, readings: curve, startAt, ended: true }, LONGEST_GAP_SECONDS * 1000), limit }],
    notes: [],
    sources: [source],
    grounds: [],
    cautions: [cautions.limits],
  };
}

const typedThickness = ({ value, unit }: { value: number; unit: 'in' | 'cm' }) => asGiven(value, unit);
